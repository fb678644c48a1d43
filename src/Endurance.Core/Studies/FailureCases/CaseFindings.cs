using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases;

/// <summary>What a reader of one case should know besides the minutes.</summary>
internal static class CaseFindings
{
    public static ImmutableArray<Finding> Of(Scenario scenario, FailureCase failureCase, SimulationResult run) =>
        [.. BatteryFindings.Of(scenario, run), .. Junctions(scenario, run), .. FullDuty(scenario, failureCase, run)];

    private static IEnumerable<Finding> Junctions(Scenario scenario, SimulationResult run) =>
        from pair in scenario.Feeds.Zip(run.Feeds)
        let limit = (pair.First.Diode as JunctionDiode)?.MaximumJunction
        where limit is not null && pair.Second.HighestJunction > limit
        let value = FormattableString.Invariant($"{pair.Second.HighestJunction!.Value.Celsius:F0} degC")
        select new Finding("junction-too-hot", Severity.Warning, pair.First.Name, value,
            $"The diode of {pair.First.Name} reaches {value}; its limit is {limit}. Use a larger diode or a better heat path.");

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
        catch (ChatteringException chattering)
        {
            return chattering.Parts.Select(part => AtFullDuty(part, "switch off and on without end"));
        }
    }

    private static Finding AtFullDuty(string part, string does) => new("stops-at-full-duty", Severity.Caution, part, "",
        $"{part} would {does} at the start of this case if every load drew its full current at once. The minutes use the mean over the duty.");
}
