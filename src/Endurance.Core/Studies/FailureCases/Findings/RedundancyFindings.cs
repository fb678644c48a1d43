using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Feeds that look redundant and share one thing that can take all of them.</summary>
internal static class RedundancyFindings
{
    public static IEnumerable<Finding> Of(Scenario scenario)
    {
        foreach (var bus in scenario.Buses.Where(bus => Matters(scenario, bus)))
        {
            ImmutableArray<Feed> feeds = [.. scenario.Feeds.Where(feed => string.Equals(feed.To, bus.Name, StringComparison.Ordinal))];
            var entries = feeds.Select(feed => feed.From).Distinct(StringComparer.Ordinal);
            if (feeds.Length >= 2 && !HasSource(scenario, bus.Name) && Shared(scenario, bus.Name, entries, feeds) is { } shared)
                yield return Share($"The feeds {Names(feeds)} of {bus.Name}", bus.Name, shared);
        }

        foreach (var load in scenario.Loads.Where(load => load.Inputs.Length >= 2))
        {
            if (Shared(scenario, "", load.Inputs.Select(input => input.Bus).Distinct(StringComparer.Ordinal), []) is { } shared)
                yield return Share($"The inputs of {load.Name}", load.Name, shared);
        }
    }

    private static Finding Share(string what, string part, string shared) => new("feeds-share", Severity.Warning, part, shared,
        $"{what} look redundant but share {shared}: one fault there takes them all. Part them as far as their sources.");

    /// <summary>The one thing without which nothing comes through; nearest first. <see langword="null"/>: there is none.</summary>
    private static string? Shared(Scenario scenario, string target, IEnumerable<string> entries, ImmutableArray<Feed> feeds)
    {
        string[] doors = [.. entries];
        Feed[] upstream = [.. scenario.Feeds.Where(feed => !string.Equals(feed.From, target, StringComparison.Ordinal) && !string.Equals(feed.To, target, StringComparison.Ordinal))];
        if (!IsFed(scenario, doors, upstream, ""))
            return null;
        var bars = scenario.Buses.Select(bus => bus.Name).Where(bus => !string.Equals(bus, target, StringComparison.Ordinal));
        if (upstream.FirstOrDefault(feed => ProtectionOf(feed) is not null && !IsFed(scenario, doors, [.. upstream.Where(other => other != feed)], "")) is { } protectedFeed)
            return $"the {ProtectionWords.Of(ProtectionOf(protectedFeed)!.Kind)} of {protectedFeed.Name}";
        if (bars.OrderByDescending(bus => doors.Contains(bus, StringComparer.Ordinal)).FirstOrDefault(bus => !IsFed(scenario, doors, upstream, bus)) is { } bar)
            return $"the bar {bar}";
        return SharedCoilSupply(feeds) ?? SharedGround(feeds);
    }

    private static bool IsFed(Scenario scenario, string[] doors, Feed[] feeds, string without)
    {
        var sources = scenario.Batteries.Select(battery => battery.Bus).Concat(scenario.Alternators.Select(alternator => alternator.Bus));
        Feed[] left = [.. feeds.Where(feed => !string.Equals(feed.From, without, StringComparison.Ordinal) && !string.Equals(feed.To, without, StringComparison.Ordinal))];
        var reached = Reach.From(sources.Where(bus => !string.Equals(bus, without, StringComparison.Ordinal)), left, []);
        return doors.Any(reached.Contains);
    }

    private static string? SharedCoilSupply(ImmutableArray<Feed> feeds)
    {
        string?[] supplies = [.. feeds.Select(feed => feed.Contactor is { IsNormallyClosed: false } contactor ? contactor.CoilBus ?? feed.From : null).Distinct(StringComparer.Ordinal)];
        return supplies is [{ } one] ? $"the coil supply {one}" : null;
    }

    private static string? SharedGround(ImmutableArray<Feed> feeds)
    {
        string?[] grounds = [.. feeds.Select(feed => feed.Return?.To).Distinct(StringComparer.Ordinal)];
        return grounds is [{ } one] ? $"the ground {one}" : null;
    }

    private static bool Matters(Scenario scenario, Bus bus) =>
        bus.Cutoff is not null || scenario.Loads.Any(load => load.IsEssential && string.Equals(load.Bus, bus.Name, StringComparison.Ordinal));

    private static bool HasSource(Scenario scenario, string bus) =>
        scenario.Batteries.Any(battery => string.Equals(battery.Bus, bus, StringComparison.Ordinal))
        || scenario.Alternators.Any(alternator => string.Equals(alternator.Bus, bus, StringComparison.Ordinal));

    private static Protection? ProtectionOf(Feed feed) => feed.Fuse ?? feed.Breaker ?? feed.FusibleLink;

    private static string Names(ImmutableArray<Feed> feeds) => Figures.Names([.. feeds.Select(feed => feed.Name)]);
}
