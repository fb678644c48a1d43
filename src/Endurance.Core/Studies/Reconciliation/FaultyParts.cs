using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Loads and meters with something wrong.</summary>
internal static class FaultyParts
{
    public static Fault OnBus(Load load, string bus) => new()
    {
        Kind = FaultKind.LoadOnWrongBus,
        Part = load.Name,
        Label = $"{load.Name} hangs on {bus}",
        Value = bus,
        Applied = setup => Changed(setup, load.Name, drawn => drawn with { Bus = bus }),
    };

    public static Fault DrawsNothing(Load load) => new()
    {
        Kind = FaultKind.LoadDrawsNothing,
        Part = load.Name,
        Label = $"{load.Name} is not connected or switched off",
        Value = "0 A",
        Applied = setup => Changed(setup, load.Name, drawn => drawn with { IsOn = false }),
    };

    public static Fault Draws(MeasuredLoad load) => new()
    {
        Kind = FaultKind.LoadDrawsOtherwise,
        Part = load.Drawn.Name,
        Label = $"{load.Drawn.Name} draws {(load.Amperes > load.Predicted ? "more" : "less")} than the scenario says",
        Value = FormattableString.Invariant($"{((load.Amperes / load.Predicted) - 1) * 100:+0;-0} %"),
        Applied = setup => Changed(setup, load.Drawn.Name, drawn => drawn with { Demand = load.Measured.Demand }),
    };

    /// <param name="ratio">Shown over true amperes.</param>
    public static Fault MeterOff(double ratio) => new()
    {
        Kind = FaultKind.MeterOff,
        Part = "ammeter",
        Label = "the ammeter, or the shunt it reads, is off by one factor",
        Value = FormattableString.Invariant($"{(ratio - 1) * 100:+0;-0} %"),
        Shown = (reading, value) => reading.Kind == ReadingKind.BusVolts ? value : value * ratio,
    };

    private static TestSetup Changed(TestSetup setup, string name, Func<Load, Load> change) => setup with
    {
        Scenario = setup.Scenario with
        {
            Loads = [.. setup.Scenario.Loads.Select(load => string.Equals(load.Name, name, StringComparison.Ordinal) ? change(load) : load)],
        },
    };
}
