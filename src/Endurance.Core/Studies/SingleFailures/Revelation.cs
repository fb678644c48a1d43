using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.SingleFailures;

/// <summary>Whether a failure would be noticed before it matters.</summary>
internal static class Revelation
{
    /// <summary>Minutes of normal operation within which a loss counts as noticed.</summary>
    private const double Attention = 10;

    /// <summary>Volts of change at a bus with loads that a voltmeter shows to an eye that is not looking for it (common practice, no source).</summary>
    private const double Visible = 0.5;

    /// <summary>What shows the failure while nothing else has failed, or else the ground test that does.</summary>
    public static (string By, bool IsHidden) Of(
        Scenario scenario, SimulationResult normal, PartFailure[] failures, SimulationOptions options, CancellationToken cancellation)
    {
        var acting = failures.Where(failure => failure.Case is null).ToArray();
        if (acting.Length == 0)
            return ("practice of the procedure", true);
        var (failed, changed) = SingleFailureStudy.Apply(scenario, new FailureCase { Name = SingleFailureStudy.OnItsOwn }, acting);
        if (normal.BreakOff is { } always)
            return ($"not known: {always.Words} with nothing failed", false);
        var run = Watched(failed, changed, options, cancellation);
        if (run.BreakOff is { } breakOff)
            return (breakOff.Cause == BreakOffCause.Chattering ? $"{string.Join(" and ", breakOff.Parts)} switching on and off" : $"not known: {breakOff.Words}", false);
        if (Shown(scenario, normal, run) is { } by)
            return (by, false);
        return NotShown(scenario, acting) is { } not ? (not, false) : (string.Join("; ", acting.Select(GroundTest).Distinct()), true);
    }

    /// <summary>A full battery of no acceptance takes what a runaway alternator gives and holds the bus down, which no real one does; so that nothing shows is no answer.</summary>
    private static string? NotShown(Scenario scenario, PartFailure[] acting)
    {
        var swallowing = scenario.Batteries.Where(battery => battery.ChargeAcceptancePerHour is null).Select(battery => battery.Name).ToArray();
        return swallowing.Length > 0 && Array.Exists(acting, failure => failure.Mode == FailureMode.OverVoltage)
            ? $"not shown by this model: without charge_acceptance {string.Join(" and ", swallowing)} {(swallowing.Length == 1 ? "takes" : "take")} all the current there is, full or not"
            : null;
    }

    /// <summary>The minutes in which somebody looks, with the volts at their end.</summary>
    public static SimulationResult Watched(Scenario scenario, FailureCase failureCase, SimulationOptions options, CancellationToken cancellation)
    {
        var watched = Quantities.Duration.FromMinutes(Attention);
        return new Simulator(scenario with { Horizon = scenario.Horizon < watched ? scenario.Horizon : watched })
            .RunUntilBreakOff(failureCase, options with { SampleInterval = watched }, cancellation);
    }

    private static string? Shown(Scenario scenario, SimulationResult normal, SimulationResult run)
    {
        foreach (var (before, after) in normal.Loads.Zip(run.Loads))
        {
            if (after.TimePowered is { Minutes: < Attention } && before.TimePowered is not { Minutes: < Attention })
                return $"{after.Name} stops";
        }

        var news = run.Events.Where(happened => !normal.Events.Any(usual => string.Equals(usual.What, happened.What, StringComparison.Ordinal))).ToArray();
        if (Array.Find(news, happened => happened.Kind == EventKind.Warning) is { } warning)
            return $"{warning.Part} comes on";
        foreach (var (before, after) in normal.Buses.Zip(run.Buses))
        {
            if (OnTheVoltmeter(scenario, after.Name, before.StartVoltage.Volts, after.StartVoltage.Volts) is { } atOnce)
                return atOnce;
        }

        // A battery holds a bus up at first; a source that is gone shows as the battery sags instead of filling.
        foreach (var (before, after) in normal.Trace!.BusVolts.Zip(run.Trace!.BusVolts))
        {
            if (OnTheVoltmeter(scenario, after.Name, before.Values[^1], after.Values[^1]) is { } inTime)
                return FormattableString.Invariant($"{inTime} after {Attention:F0} min");
        }

        return Array.Find(news, happened => happened.Kind == EventKind.Tripped)?.What;
    }

    private static string? OnTheVoltmeter(Scenario scenario, string bus, double before, double after) =>
        Math.Abs(after - before) >= Visible && scenario.Loads.Any(load => string.Equals(load.Bus, bus, StringComparison.Ordinal))
            ? FormattableString.Invariant($"voltmeter on {bus}: {after:F1} V for {before:F1} V")
            : null;

    private static string GroundTest(PartFailure failure) => "ground test: " + failure.Mode switch
    {
        FailureMode.BatteryOpen => $"run the loads on {failure.Part} alone",
        FailureMode.ShortedCell => $"rest voltage of {failure.Part}",
        FailureMode.BatteryFlat => $"rest voltage of {failure.Part} before flight",
        FailureMode.DiodeOpen or FailureMode.WireOpen or FailureMode.ProtectionOpen or FailureMode.StuckOpen =>
            $"feed the far side through {failure.Part} alone: it must carry the load",
        FailureMode.DiodeShort => $"power the far side of {failure.Part} with its source off: nothing must come back",
        FailureMode.StuckClosed => $"open {failure.Part} with the far side unpowered: its voltage must go",
        FailureMode.SourceOff or FailureMode.OverVoltage => $"voltage of {failure.Part} with the engine running",
        FailureMode.ChargerOff => $"output current of {failure.Part} into a part-charged battery",
        FailureMode.WarningSilent => $"lower the sensed voltage until {failure.Part} comes on",
        _ => $"insulation of {failure.Part}",
    };
}
