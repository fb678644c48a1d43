using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>The aircraft with some faults in it, to be held against the readings.</summary>
/// <param name="Faults">Taken to be there.</param>
internal sealed record Suspicion(ImmutableArray<Fault> Faults)
{
    /// <summary>None.</summary>
    public static Suspicion OfNothing { get; } = new(ImmutableArray<Fault>.Empty);

    public Suspicion And(Fault fault) => new(Faults.Add(fault));

    /// <summary>One prediction a reading of the point; <see langword="null"/> where the network cannot be solved so.</summary>
    /// <param name="point">With a setup.</param>
    public ImmutableArray<ExpectedReading>? Predict(TestPoint point)
    {
        if (Faults.IsEmpty)
            return point.Readings;
        try
        {
            var readings = Faults.Aggregate(point.Setup!, (setup, fault) => fault.Applied(setup)).Measure();
            return [.. point.Readings.Select(reading => Shown(readings.Of(reading.Kind, reading.Part)))];
        }
        catch (BrokenOffException)
        {
            return null;
        }
    }

    private ExpectedReading Shown(ExpectedReading so)
    {
        var value = Faults.Aggregate(so.Predicted, (value, fault) => fault.Shown(so, value));
        return so.Kind == ReadingKind.BusVolts ? so : so with { Predicted = value, Tolerance = Tolerances.Amperes(value) };
    }
}
