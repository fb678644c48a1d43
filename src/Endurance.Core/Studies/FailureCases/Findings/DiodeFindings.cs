using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Diodes that carry too much, or let through what they should stop.</summary>
internal static class DiodeFindings
{
    /// <summary>Ampere-hours backwards through a feed below which it is leakage.</summary>
    private const double NoticeableReverse = 0.01;

    /// <summary>Share of a battery that may leak away in a month unsaid.</summary>
    private const double NoticeableLeakage = 0.1;

    private static readonly Duration Month = Duration.FromHours(30 * 24);

    public static IEnumerable<Finding> Of(Scenario scenario, SimulationResult run) =>
        [.. scenario.Feeds.Zip(run.Feeds).Where(pair => pair.First.Diode is not null).SelectMany(pair => OfFeed(scenario, pair.First, pair.Second).OfType<Finding>())];

    private static IEnumerable<Finding?> OfFeed(Scenario scenario, Feed feed, FeedOutcome outcome)
    {
        yield return Hot(feed, outcome);
        yield return OverCurrent(feed, outcome);
        yield return Backwards(feed, outcome);
        yield return Leaking(scenario, feed);
    }

    private static Finding? Hot(Feed feed, FeedOutcome outcome)
    {
        if (feed.Diode is not JunctionDiode { MaximumJunction: { } limit } || outcome.HighestJunction is not { } highest || highest <= limit)
            return null;
        var value = FormattableString.Invariant($"{highest.Celsius:F0} degC");
        return new Finding("junction-too-hot", Severity.Warning, feed.Name, value,
            $"The diode of {feed.Name} reaches {value}; its limit is {limit}. Use a larger diode or a better heat path.");
    }

    private static Finding? OverCurrent(Feed feed, FeedOutcome outcome)
    {
        if (feed.Diode!.Rated is not { } rated || outcome.HighestCurrent <= rated)
            return null;
        var value = Figures.Amperes(outcome.HighestCurrent);
        return new Finding("diode-over-current", Severity.Warning, feed.Name, value,
            $"The diode of {feed.Name} carries up to {value} and is rated {Figures.Amperes(rated)}. Use a larger diode.");
    }

    private static Finding? Backwards(Feed feed, FeedOutcome outcome)
    {
        if (outcome.ReverseCharge.AmpereHours < NoticeableReverse)
            return null;
        var value = FormattableString.Invariant($"{outcome.ReverseCharge.AmpereHours:F2} Ah");
        return new Finding("diode-backwards", Severity.Caution, feed.Name, value,
            $"{value} flow backwards through the diode of {feed.Name}, from {feed.To} to {feed.From}: it has failed short or leaks, and what stands behind it is drained. Decide how you would notice, and what opens the feed.");
    }

    /// <summary>What runs back through the diode into a dead bus while the aircraft stands.</summary>
    private static Finding? Leaking(Scenario scenario, Feed feed)
    {
        if (feed.Diode is not JunctionDiode diode)
            return null;
        var battery = scenario.Batteries.FirstOrDefault(battery => string.Equals(battery.Bus, feed.To, StringComparison.Ordinal));
        if (battery is null || feed.Switch is not null || feed.Contactor is not null)
            return null;
        var volts = battery.Emf.Y[^1];
        var lost = Current.FromAmperes(diode.SaturationCurrentAt(scenario.Ambient).Amperes + (diode.Leakage.Siemens * volts)) * Month;
        if (lost.AmpereHours < battery.EffectiveCapacity.AmpereHours * NoticeableLeakage)
            return null;
        var value = FormattableString.Invariant($"{lost.AmpereHours:0.##} Ah");
        return new Finding("diode-leakage", Severity.Caution, feed.Name, value,
            $"Parked for 30 days, {battery.Name} loses {value} back through the diode of {feed.Name}. Use a diode that leaks less, or open the feed when parked.");
    }
}
