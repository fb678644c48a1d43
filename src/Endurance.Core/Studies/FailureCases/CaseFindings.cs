using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases.Findings;

namespace Endurance.Studies.FailureCases;

/// <summary>What a reader of one case should know besides the minutes.</summary>
internal static class CaseFindings
{
    public static ImmutableArray<Finding> Of(Scenario scenario, FailureCase failureCase, SimulationResult run) =>
    [
        .. SourceFindings.Of(scenario, run),
        .. RecognitionFindings.Of(failureCase),
        .. WarningFindings.Of(scenario, failureCase, run),
        .. ContactorFindings.Of(scenario, failureCase),
        .. RedundancyFindings.Of(scenario),
        .. ProtectionFindings.Of(scenario, run),
        .. LoadFindings.Of(scenario),
        .. BatteryFindings.Of(scenario, run),
        .. DiodeFindings.Of(scenario, run),
        .. FullDuty(scenario, failureCase, run),
    ];

    /// <summary>A mean over the duty hides the peak: what would stop at the start of the case with every load at full draw?</summary>
    private static IEnumerable<Finding> FullDuty(Scenario scenario, FailureCase failureCase, SimulationResult run)
    {
        if (scenario.Loads.All(load => load.Duty >= 1))
            return [];
        var full = scenario with { Loads = [.. scenario.Loads.Select(load => load with { Duty = 1 })] };
        try
        {
            var atFullDraw = new Simulator(full).RunStart(failureCase);
            return from pair in run.Loads.Zip(atFullDraw)
                   where pair.Second.TimePowered is not null && pair.First.TimePowered is not { Seconds: 0 }
                   select AtFullDuty(pair.First.Name, "stop");
        }
        catch (BrokenOffException broken)
        {
            return broken.BreakOff.Cause == BreakOffCause.Chattering ? broken.BreakOff.Parts.Select(part => AtFullDuty(part, "switch off and on without end")) : [];
        }
    }

    private static Finding AtFullDuty(string part, string does) => new("stops-at-full-duty", Severity.Caution, part, "",
        $"{part} would {does} at the start of this case if every load drew its full current at once. The minutes use the mean over the duty.");
}
