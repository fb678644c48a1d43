namespace Endurance.Scenarios.Rules;

/// <summary>Finds buses that no source could ever reach, even with every switch closed.</summary>
internal static class FeedingRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario)
    {
        var fed = new HashSet<string>(StringComparer.Ordinal);
        var waiting = new Queue<string>(scenario.Batteries.Select(part => part.Bus).Concat(scenario.Alternators.Select(part => part.Bus)));
        while (waiting.TryDequeue(out var bus))
        {
            if (!fed.Add(bus))
                continue;
            foreach (var charger in scenario.Chargers.Where(charger => string.Equals(charger.From, bus, StringComparison.Ordinal)))
                waiting.Enqueue(charger.To);
            foreach (var feed in scenario.Feeds)
            {
                if (string.Equals(feed.From, bus, StringComparison.Ordinal))
                    waiting.Enqueue(feed.To);
                else if (feed.Diode is null && string.Equals(feed.To, bus, StringComparison.Ordinal))
                    waiting.Enqueue(feed.From);
            }
        }

        foreach (var bus in scenario.Buses.Where(bus => !fed.Contains(bus.Name)))
        {
            yield return RuleFinding.Warning(
                "bus-not-fed", $"buses.{bus.Name}", bus.Name,
                $"nothing feeds the bus `{bus.Name}`: its loads are never powered",
                "a battery or an alternator on it, or a feed or charger to it from a bus that is fed");
        }
    }
}
