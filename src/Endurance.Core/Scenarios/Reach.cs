using Endurance.Components;

namespace Endurance.Scenarios;

/// <summary>Where current can go, by the drawing alone.</summary>
internal static class Reach
{
    /// <summary>Buses that current from some buses can come to, along feeds either way or with their diode, and through chargers.</summary>
    public static HashSet<string> From(IEnumerable<string> buses, IReadOnlyCollection<Feed> feeds, IReadOnlyCollection<Charger> chargers)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var waiting = new Queue<string>(buses);
        while (waiting.TryDequeue(out var bus))
        {
            if (!reached.Add(bus))
                continue;
            foreach (var feed in feeds)
            {
                if (string.Equals(feed.From, bus, StringComparison.Ordinal))
                    waiting.Enqueue(feed.To);
                else if (feed.Diode is null && string.Equals(feed.To, bus, StringComparison.Ordinal))
                    waiting.Enqueue(feed.From);
            }

            foreach (var charger in chargers.Where(charger => string.Equals(charger.From, bus, StringComparison.Ordinal)))
                waiting.Enqueue(charger.To);
        }

        return reached;
    }
}
