using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.GroundTest;

/// <summary>What the meters should show at the start of a run.</summary>
/// <param name="Scenario">As simulated.</param>
/// <param name="Result">With a trace whose first sample counts.</param>
internal sealed record TestReadings(Scenario Scenario, SimulationResult Result)
{
    /// <summary>Amperes; less is not worth a line.</summary>
    private const double Noticeable = 0.05;

    /// <summary>Volts; below it a bus counts as not powered.</summary>
    private const double Powered = 1;

    public double Amperes(ReadingKind kind, string part) => Of(kind, part).Predicted;

    /// <param name="kind">What to measure.</param>
    /// <param name="part">Name of the part.</param>
    public ExpectedReading Of(ReadingKind kind, string part)
    {
        var value = Columns(kind).First(column => string.Equals(column.Name, part, StringComparison.Ordinal)).Values[0];
        return new(part, kind, value, Tolerance(kind, part, value));
    }

    /// <summary>Buses with something on them, and every battery and feed that carries current.</summary>
    public ImmutableArray<ExpectedReading> Everything() =>
    [
        .. Columns(ReadingKind.BusVolts).Where(column => column.Values[0] >= Powered).Select(column => Of(ReadingKind.BusVolts, column.Name)),
        .. Carrying(ReadingKind.BatteryAmperes),
        .. Carrying(ReadingKind.FeedAmperes),
    ];

    /// <summary>Loads that are on and get nothing.</summary>
    public ImmutableArray<string> Dead() =>
        [.. Scenario.Loads.Where(load => load.IsOn && Amperes(ReadingKind.LoadAmperes, load.Name) <= 0).Select(load => load.Name)];

    private IEnumerable<ExpectedReading> Carrying(ReadingKind kind) =>
        Columns(kind).Where(column => Math.Abs(column.Values[0]) >= Noticeable).Select(column => Of(kind, column.Name));

    private double Tolerance(ReadingKind kind, string part, double value) => kind != ReadingKind.BusVolts ? Tolerances.Amperes(value)
        : value >= Powered ? Tolerances.Volts(Scenario, part) : Tolerances.DeadVolts(Scenario, part);

    private ImmutableArray<TraceColumn> Columns(ReadingKind kind) => kind switch
    {
        ReadingKind.BusVolts => Result.Trace!.BusVolts,
        ReadingKind.FeedAmperes => Result.Trace!.FeedAmperes,
        ReadingKind.BatteryAmperes => Result.Trace!.BatteryAmperes,
        _ => Result.Trace!.LoadAmperes,
    };
}
