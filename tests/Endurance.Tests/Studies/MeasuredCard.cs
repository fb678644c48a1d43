using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;

namespace Endurance.Tests.Studies;

/// <summary>A card of an aircraft, filled in with what an aircraft that differs from it would show.</summary>
internal sealed class MeasuredCard
{
    public MeasuredCard(Scenario scenario)
    {
        Scenario = scenario;
        Plan = GroundTestStudy.Plan(scenario);
    }

    public Scenario Scenario { get; }

    public GroundTestPlan Plan { get; }

    /// <summary>Every prediction, as it is printed.</summary>
    public ImmutableArray<MeasuredReading> AsPredicted =>
        [.. from point in Plan.Points from reading in point.Readings select Measured(point, reading, reading.Predicted)];

    /// <summary>Every point but the timed run and the engine.</summary>
    /// <param name="change">What is wrong with the aircraft, given as it is set up for a point.</param>
    /// <param name="shown">What the meter makes of a value; <see langword="null"/>: the value.</param>
    public ImmutableArray<MeasuredReading> Of(Func<TestSetup, TestSetup> change, Func<ExpectedReading, double, double>? shown = null) =>
    [
        .. from point in Plan.Points
           where point.Setup is not null
           let readings = change(point.Setup!).Measure()
           from reading in point.Readings
           let value = readings.Amperes(reading.Kind, reading.Part)
           select Measured(point, reading, shown is null ? value : shown(reading, value)),
    ];

    public ReconciliationResult Reconciled(ImmutableArray<MeasuredReading> measured) => ReconciliationStudy.Run(Scenario with { FailureCases = [] }, Plan, measured);

    private static MeasuredReading Measured(TestPoint point, ExpectedReading reading, double value) =>
        new(point.Number, reading.Kind, reading.Part, Math.Round(value, 2, MidpointRounding.AwayFromZero));
}
