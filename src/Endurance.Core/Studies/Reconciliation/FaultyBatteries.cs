using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;
using static System.FormattableString;

namespace Endurance.Studies.Reconciliation;

/// <summary>Batteries with something wrong.</summary>
internal static class FaultyBatteries
{
    public static Fault Missing(Battery battery) => new()
    {
        Kind = FaultKind.BatteryMissing,
        Part = battery.Name,
        Label = $"{battery.Name} is not connected",
        Applied = setup => setup.With(ActionVerb.Fail, battery.Name),
    };

    /// <summary>Of every battery whose rest voltage is off: with a shorted cell, or charged otherwise than typed; of several, all of them charged otherwise too.</summary>
    /// <param name="scenario">As drawn.</param>
    /// <param name="readings">Measured.</param>
    public static ImmutableArray<Fault> Off(Scenario scenario, ImmutableArray<ComparedReading> readings)
    {
        ImmutableArray<(Battery Battery, double Volts)> off =
        [
            .. from battery in scenario.Batteries
               let rest = readings.FirstOrDefault(reading => reading.Point.Group == TestGroup.RestVoltage && Is(reading.Point.Parts[0], battery.Name))
               where rest is { Verdict: ReadingVerdict.OutOfTolerance }
               select (battery, rest.Measured!.Value),
        ];
        ImmutableArray<Fault> charged = [.. off.Select(one => Charged(one.Battery, one.Volts)).OfType<Fault>()];
        return [.. off.Where(one => one.Battery.Cells is not null).Select(one => ShortedCell(one.Battery)), .. charged, .. charged.Length > 1 ? [Together(charged)] : ImmutableArray<Fault>.Empty];
    }

    /// <summary>What they feed together is right with none of them alone.</summary>
    private static Fault Together(ImmutableArray<Fault> faults) => new()
    {
        Kind = FaultKind.BatteryCharge,
        Part = faults[0].Part,
        Label = string.Join(", and ", faults.Select(fault => fault.Label)),
        Value = string.Join(", ", faults.Select(fault => fault.Value)),
        Applied = setup => faults.Aggregate(setup, (with, fault) => fault.Applied(with)),
    };

    private static Fault? Charged(Battery battery, double volts) => ChargeAt(battery.Emf, volts) is not { } charge
        ? null
        : new Fault
        {
            Kind = FaultKind.BatteryCharge,
            Part = battery.Name,
            Label = Invariant($"{battery.Name} is charged to about {charge * 100:0} % and not to {battery.InitialCharge * 100:0} %"),
            Value = Invariant($"{charge * 100:0} %"),
            Applied = setup => setup with
            {
                Scenario = setup.Scenario with
                {
                    Batteries = [.. setup.Scenario.Batteries.Select(drawn => Is(drawn.Name, battery.Name) ? drawn with { InitialCharge = charge } : drawn)],
                },
            },
        };

    private static Fault ShortedCell(Battery battery) => new()
    {
        Kind = FaultKind.ShortedCell,
        Part = battery.Name,
        Label = $"a cell of {battery.Name} is shorted",
        Applied = setup => setup.With(ActionVerb.ShortCell, battery.Name),
    };

    /// <summary>The least charge with an EMF; <see langword="null"/> where the table does not hold it.</summary>
    private static double? ChargeAt(PiecewiseLinear emf, double volts)
    {
        if (volts < emf.Y[0] || volts > emf.Y[^1])
            return null;
        var above = Enumerable.Range(0, emf.Y.Length).First(i => emf.Y[i] >= volts);
        return above == 0
            ? emf.X[0]
            : emf.X[above - 1] + ((volts - emf.Y[above - 1]) / (emf.Y[above] - emf.Y[above - 1]) * (emf.X[above] - emf.X[above - 1]));
    }

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
