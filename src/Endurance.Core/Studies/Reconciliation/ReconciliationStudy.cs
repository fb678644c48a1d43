using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Holds what was measured on the ground against what the scenario predicts.</summary>
public static class ReconciliationStudy
{
    /// <param name="scenario">Without error findings.</param>
    /// <param name="plan">Its ground test.</param>
    /// <param name="measured">In any order, at most one a reading of the plan; what the plan does not ask for is left aside.</param>
    /// <param name="cancellation">Looked at between simulations.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ReconciliationResult Run(Scenario scenario, GroundTestPlan plan, ImmutableArray<MeasuredReading> measured, CancellationToken cancellation = default)
    {
        var readings = Compared(plan, measured);
        var (alone, leftOut) = LoadMeasurement.Of(scenario, readings);
        var (causes, unexplained) = Diagnosis.Of(readings, new Suspects(scenario, alone), cancellation);
        var contradicted = ContradictedLoads.Of(scenario, readings, causes, alone);
        var loads = alone.RemoveRange(contradicted);
        unexplained = unexplained.RemoveAll(reading => contradicted.Any(load => load.Point == reading.Point.Number));
        return new ReconciliationResult
        {
            Scenario = scenario,
            Readings = readings,
            Loads = loads,
            Findings =
            [
                .. causes.Select(CauseFindings.Of),
                .. LevelFindings.Of(readings),
                .. causes.IsEmpty && unexplained.IsEmpty ? CauseFindings.OfTimedRun(scenario, readings) : [],
                .. causes.Any(cause => cause.Fault.Kind == FaultKind.MeterOff) ? [] : contradicted.Select(ContradictedLoads.Finding),
                .. CauseFindings.Of(unexplained),
                .. leftOut,
            ],
            Before = Cases(scenario, cancellation),
            After = Cases(WithMeasured(scenario, loads), cancellation),
        };
    }

    /// <summary>The scenario with the measured loads in place of its own.</summary>
    public static Scenario WithMeasured(Scenario scenario, ImmutableArray<MeasuredLoad> loads)
    {
        Load Measured(Load drawn) => loads.FirstOrDefault(load => string.Equals(load.Drawn.Name, drawn.Name, StringComparison.Ordinal))?.Measured ?? drawn;
        return scenario with { Loads = [.. scenario.Loads.Select(Measured)] };
    }

    private static ImmutableArray<ComparedReading> Compared(GroundTestPlan plan, ImmutableArray<MeasuredReading> measured)
    {
        var found = measured.ToDictionary(reading => (reading.Point, reading.Kind, reading.Part));
        return
        [
            .. from point in plan.Points
               from expected in point.Readings
               let reading = found.GetValueOrDefault((point.Number, expected.Kind, expected.Part))
               select new ComparedReading(point, expected, reading?.Value, reading?.Date),
        ];
    }

    private static ImmutableArray<CaseResult> Cases(Scenario scenario, CancellationToken cancellation) =>
        FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions(), cancellation);
}
