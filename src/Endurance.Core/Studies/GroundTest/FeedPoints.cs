using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Studies.GroundTest;

/// <summary>Each feed alone: it carries, its diode holds, its contact interrupts.</summary>
internal static class FeedPoints
{
    /// <summary>Amperes that prove a path.</summary>
    private const double Proof = 0.1;

    public static TestPoint Conducts(Scenario scenario, Feed feed)
    {
        var attempts = Attempts(scenario, feed).Select(setup => (Setup: setup, Readings: setup.Measure())).ToList();
        var index = attempts.FindIndex(attempt => attempt.Readings.Amperes(ReadingKind.FeedAmperes, feed.Name) >= Proof);
        var (setup, readings) = attempts[Math.Max(index, 0)];
        return PointMaker.Make(
            TestGroup.Conducts,
            $"{feed.Name} carries from {feed.From} to {feed.To}",
            [feed.Name],
            setup,
            [readings.Of(ReadingKind.BusVolts, feed.From), readings.Of(ReadingKind.BusVolts, feed.To), readings.Of(ReadingKind.FeedAmperes, feed.Name)],
            index < 0 ? "Nothing is predicted to flow: nothing on the ground can prove this feed." : "No current: feed open, protection open, or diode the wrong way round. Volts too low at the far end: a joint of high resistance.");
    }

    public static TestPoint Blocks(Scenario scenario, Feed feed)
    {
        var setup = SupplyPath.To(scenario, feed.To, feed.Name, feed.From) is { } path
            ? Bare(scenario, [.. path.Feeds, feed.Name], path.Battery)
            : Bare(scenario, [feed.Name]).WithSupply(feed.To);
        var readings = setup.WithResistor(feed.From).Measure();
        return PointMaker.Make(
            TestGroup.DiodeBlocks,
            $"the diode of {feed.Name} lets nothing back from {feed.To} to {feed.From}",
            [feed.Name],
            setup.WithResistor(feed.From),
            [readings.Of(ReadingKind.BusVolts, feed.To), readings.Of(ReadingKind.BusVolts, feed.From)],
            $"Volts on {feed.From}: the diode is shorted or the wrong way round.");
    }

    public static TestPoint Opens(Scenario scenario, Feed feed)
    {
        var path = SupplyPath.To(scenario, feed.From, feed.Name, feed.To);
        var chosen = scenario.Selectors.FirstOrDefault(selector => selector.Positions.Any(position => Is(position.Feed, feed.Name)));
        var turned = chosen is null ? scenario : scenario with { Selectors = scenario.Selectors.Replace(chosen, TurnedAway(chosen, feed.Name)) };
        var setup = path is null ? Bare(turned, []).WithSupply(feed.From) : Bare(turned, [.. path.Feeds], path.Battery);
        setup = setup.WithResistor(feed.To);
        var readings = setup.Measure();
        return PointMaker.Make(
            TestGroup.Opens,
            $"{feed.Name} interrupts",
            [feed.Name],
            setup,
            [readings.Of(ReadingKind.BusVolts, feed.From), readings.Of(ReadingKind.BusVolts, feed.To)],
            $"Volts on {feed.To}: the contact of {feed.Name} is stuck closed or bypassed.");
    }

    /// <summary>It has a contact, a protection that can be pulled, or a selector.</summary>
    public static bool CanOpen(Scenario scenario, Feed feed) =>
        !Isolation.Of(feed).IsDisconnected || scenario.Selectors.Any(selector => selector.Positions.Any(position => Is(position.Feed, feed.Name)));

    /// <summary>From the most natural to the surest.</summary>
    private static IEnumerable<TestSetup> Attempts(Scenario scenario, Feed feed)
    {
        var loads = PointMaker.LastingLoads(scenario, feed.To);
        var stopped = TestSetup.EngineStopped(scenario);
        if (SupplyPath.To(scenario, feed.From, feed.Name, feed.To) is { } path)
        {
            var closed = stopped.WithBatteries(path.Battery).WithFeeds([.. path.Feeds, feed.Name]);
            yield return closed.WithLoads(loads);
            yield return closed.WithLoads().WithResistor(feed.To);
        }

        yield return stopped.WithBatteries().WithFeeds(feed.Name).WithLoads().WithSupply(feed.From).WithResistor(feed.To);
    }

    private static TestSetup Bare(Scenario scenario, string[] feeds, params string[] batteries) =>
        TestSetup.EngineStopped(scenario).WithBatteries(batteries).WithFeeds(feeds).WithLoads();

    private static Selector TurnedAway(Selector selector, string feed) => selector with
    {
        At = selector.Positions.Where(position => !Is(position.Feed, feed)).Select(position => position.Position).FirstOrDefault(selector.At),
    };

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
