using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Studies.GroundTest;

/// <summary>The shortest way from a battery to a bus.</summary>
/// <param name="Battery">Where it starts.</param>
/// <param name="Feeds">In order; empty when the battery is on the bus.</param>
internal sealed record SupplyPath(string Battery, ImmutableArray<string> Feeds)
{
    /// <param name="scenario">Its diodes give the direction; whether contacts are closed does not matter.</param>
    /// <param name="bus">Where the way ends.</param>
    /// <param name="without">A feed that the way, and whatever shares a selector with it, may not use.</param>
    /// <param name="past">A bus that it may not touch.</param>
    /// <returns><see langword="null"/> when no battery gets there.</returns>
    public static SupplyPath? To(Scenario scenario, string bus, string? without = null, string? past = null)
    {
        HashSet<string> barred = [.. scenario.Selectors.Where(selector => selector.Positions.Any(position => Is(position.Feed, without)))
            .SelectMany(selector => selector.Positions).Select(position => position.Feed)];
        if (without is not null)
            barred.Add(without);
        HashSet<string> seen = past is null ? [] : [past];
        var ways = new Queue<(string Bus, SupplyPath Path)>();
        foreach (var battery in scenario.Batteries.Where(battery => seen.Add(battery.Bus)))
            ways.Enqueue((battery.Bus, new SupplyPath(battery.Name, [])));
        while (ways.TryDequeue(out var way))
        {
            if (Is(way.Bus, bus))
                return way.Path;
            foreach (var feed in scenario.Feeds.Where(feed => !barred.Contains(feed.Name)))
            {
                if (Onwards(feed, way.Bus) is { } next && seen.Add(next))
                    ways.Enqueue((next, way.Path with { Feeds = way.Path.Feeds.Add(feed.Name) }));
            }
        }

        return null;
    }

    private static string? Onwards(Feed feed, string from)
    {
        if (Is(feed.From, from))
            return feed.To;
        return feed.Diode is null && Is(feed.To, from) ? feed.From : null;
    }

    private static bool Is(string? a, string? b) => string.Equals(a, b, StringComparison.Ordinal);
}
