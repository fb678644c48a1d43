using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Says what readings out of tolerance point at, and what to do.</summary>
internal static class CauseFindings
{
    private const int MostPointsNamed = 6;

    /// <summary>Samples of a timed run that have to be low.</summary>
    private const int FewestSamples = 2;

    public static Finding Of(Cause cause)
    {
        var (code, severity, advice) = Known(cause.Fault.Kind);
        return new Finding(code, severity, cause.Fault.Part, cause.Fault.Value, $"{Said(cause.Explained)} as if {cause.Fault.Label}.{Or(cause.Others)} {advice}");
    }

    /// <param name="unexplained">Out of tolerance with every cause in place.</param>
    public static ImmutableArray<Finding> Of(ImmutableArray<ComparedReading> unexplained)
    {
        if (unexplained.IsEmpty)
            return [];
        var count = unexplained.Length == 1 ? "1 reading" : $"{unexplained.Length} readings";
        return
        [
            new Finding(
                "readings-unexplained", Severity.Caution, unexplained[0].Expected.Part, count,
                $"{Said(unexplained)} out of tolerance, and no cause that is known fits. Measure again with a zeroed meter, then the points that are still blank, before you look further."),
        ];
    }

    /// <summary>Batteries whose volts in the timed run stay low to its end; with none, the samples that are off.</summary>
    public static ImmutableArray<Finding> OfTimedRun(Scenario scenario, ImmutableArray<ComparedReading> readings)
    {
        ImmutableArray<ComparedReading> run = [.. readings.Where(reading => reading.Point.Group == TestGroup.EnduranceRun && reading.Measured is not null)];
        var early = scenario.Batteries.Select(battery => RunsDownEarly(battery, run)).OfType<Finding>().ToImmutableArray();
        return early.IsEmpty ? Of([.. run.Where(reading => reading.Verdict == ReadingVerdict.OutOfTolerance)]) : early;
    }

    private static Finding? RunsDownEarly(Battery battery, ImmutableArray<ComparedReading> run)
    {
        var samples = run.Where(reading => reading.Expected.Kind == ReadingKind.BusVolts && string.Equals(reading.Expected.Part, battery.Bus, StringComparison.Ordinal)).ToList();
        return samples.Count < FewestSamples || samples.TakeLast(FewestSamples).Any(sample => sample.Verdict != ReadingVerdict.OutOfTolerance || sample.Deviation >= 0)
            ? null
            : new Finding(
                "battery-runs-down-early", Severity.Warning, battery.Name, FormattableString.Invariant($"{samples[^1].Deviation:0.00} V"),
                $"In the timed run its volts fell below the prediction by more than the tolerance, up to {Label(samples[^1])}, while nothing else explains it: it holds less, or was charged less, than the scenario says. Run a capacity test, fit its log, and type the health that comes out; the minutes here do not know of it.");
    }

    private static (string Code, Severity Severity, string Advice) Known(FaultKind kind) => kind switch
    {
        FaultKind.BatteryMissing => ("battery-missing", Severity.Warning, "Look at its terminals, its fuse and its ground before anything else: no case can count on it."),
        FaultKind.BatteryCharge => ("battery-charge-differs", Severity.Warning, "Charge it in full, let it rest and repeat its points, or type the charge that it has: the minutes here count on what the scenario says."),
        FaultKind.ShortedCell => ("cell-shorted", Severity.Warning, "Take it out of the aircraft: it heats when it is charged, and no case can count on it."),
        FaultKind.DiodeReversed => ("diode-reversed", Severity.Warning, "Turn it round and repeat its points."),
        FaultKind.DiodeShorted => ("diode-shorted", Severity.Warning, "Replace it and repeat its points: nothing shows this in flight until the other side fails."),
        FaultKind.FeedOpen => ("feed-open", Severity.Warning, "Follow it from end to end: contact, protection, diode, terminals, ground."),
        FaultKind.ContactStuck => ("contact-stuck", Severity.Warning, "Replace it, or find what bridges it: no procedure that opens it works."),
        FaultKind.JointResistance => ("joint-resistance", Severity.Warning, "Measure the volts across each joint, contact and protection under load; clean and tighten the one that has them."),
        FaultKind.LoadOnWrongBus => ("load-on-wrong-bus", Severity.Warning, "Trace its supply wire; move the wire, or correct the bus in the scenario."),
        FaultKind.LoadDrawsNothing => ("load-draws-nothing", Severity.Warning, "See that it runs, then look at its switch, fuse, wire and ground. Its draw stays as the scenario has it."),
        FaultKind.LoadDrawsOtherwise => ("load-draws-otherwise", Severity.Caution, "Measure it once more as it is used in flight; if it stays so, plan with the measured draw."),
        _ => ("ammeter-off", Severity.Warning, "Compare it with another meter on one known current before you use any measured draw: the minutes after rest on it, apart from draws that it shows lower than the rest of the card has them."),
    };

    private static string Or(ImmutableArray<Fault> others) =>
        others.IsEmpty ? "" : $" The same readings also fit this: {string.Join("; or ", others.Select(other => other.Label))}.";

    private static string Said(ImmutableArray<ComparedReading> readings)
    {
        var points = readings.Select(Label).Distinct(StringComparer.Ordinal).ToList();
        var named = string.Join(", ", points.Take(MostPointsNamed));
        return points.Count switch
        {
            1 => $"{named} reads",
            <= MostPointsNamed => $"{named} read",
            _ => FormattableString.Invariant($"{named} and {points.Count - MostPointsNamed} more read"),
        };
    }

    private static string Label(ComparedReading reading) => FormattableString.Invariant($"T{reading.Point.Number}");
}
