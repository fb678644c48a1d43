using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases.Findings;

namespace Endurance.Studies.FailureCases;

/// <summary>What a reader of one case should know besides the minutes.</summary>
internal static class CaseFindings
{
    /// <summary>Ampere-hours put back below which a recharge is not worth a word.</summary>
    private const double NoticeableRecharge = 0.05;

    public static ImmutableArray<Finding> Of(Scenario scenario, FailureCase failureCase, SimulationResult run) =>
    [
        .. SourceFindings.Of(scenario, run),
        .. RecognitionFindings.Of(failureCase),
        .. WarningFindings.Of(scenario, failureCase, run),
        .. ContactorFindings.Of(scenario, failureCase),
        .. RedundancyFindings.Of(scenario),
        .. ProtectionFindings.Of(scenario, run),
        .. LoadFindings.Of(scenario),
        .. Recharges(run),
        .. DiodeFindings.Of(scenario, run),
        .. FullDuty(scenario, failureCase, run),
    ];

    private static IEnumerable<Finding> Recharges(SimulationResult run) =>
        from battery in run.Batteries
        where battery.Received.AmpereHours >= NoticeableRecharge
        let value = FormattableString.Invariant($"{battery.Received.AmpereHours:F2} Ah")
        select new Finding("battery-recharged", Severity.Information, battery.Name, value,
            $"{battery.Name} takes {value} back. Charge is counted as a fraction of life, which needs more to refill than a fast discharge gave; the minutes err short.");

    /// <summary>A mean over the duty hides the peak: what would stop at the start of the case with every load at full draw?</summary>
    private static IEnumerable<Finding> FullDuty(Scenario scenario, FailureCase failureCase, SimulationResult run)
    {
        if (scenario.Loads.All(load => load.Duty >= 1))
            return [];
        var full = scenario with { Loads = [.. scenario.Loads.Select(load => load with { Duty = 1 })] };
        var atFullDraw = new Simulator(full).RunStart(failureCase);
        return from pair in run.Loads.Zip(atFullDraw)
               where pair.Second.TimePowered is not null && pair.First.TimePowered is not { Seconds: 0 }
               select new Finding("stops-at-full-duty", Severity.Caution, pair.First.Name, "",
                   $"{pair.First.Name} would stop at the start of this case if every load drew its full current at once. The minutes use the mean over the duty.");
    }
}
