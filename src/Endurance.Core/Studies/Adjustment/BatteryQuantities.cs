using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.Adjustment;

/// <summary>What may be varied of a battery.</summary>
internal static class BatteryQuantities
{
    public static IEnumerable<AdjustableQuantity> Of(Scenario scenario, int i)
    {
        var name = scenario.Batteries[i].Name;
        yield return new(name + ".health", QuantityKind.Fraction, 0.01, 1.5, s => s.Batteries[i].Health,
            (s, value) => Replace(s, i, battery => battery with { Health = value }));
        yield return new(name + ".charge", QuantityKind.Fraction, 0, 1, s => s.Batteries[i].InitialCharge,
            (s, value) => Replace(s, i, battery => battery with { InitialCharge = value }));
        yield return new(name + ".capacity_factor", QuantityKind.Fraction, 0.01, 2, s => s.Batteries[i].CapacityFactor,
            (s, value) => Replace(s, i, battery => battery with { CapacityFactor = value }));
        yield return new(name + ".resistance_factor", QuantityKind.Number, 0.01, 100, s => s.Batteries[i].ResistanceFactor,
            (s, value) => Replace(s, i, battery => battery with { ResistanceFactor = value }));
        yield return new(name + ".peukert", QuantityKind.Number, 1, 3, s => s.Batteries[i].PeukertExponent,
            (s, value) => Replace(s, i, battery => battery with { PeukertExponent = value }));
        yield return new(name + ".capacity", QuantityKind.Charge, 36, 3.6e7, s => s.Batteries[i].RatedCapacity.Coulombs,
            (s, value) => Replace(s, i, battery => Resized(battery, Charge.FromCoulombs(value))));
    }

    /// <summary>A battery of the same make in another size: resistance falls as capacity grows, lifetimes stay those of the currents in proportion.</summary>
    public static Battery Resized(Battery battery, Charge capacity)
    {
        var ratio = capacity / battery.RatedCapacity;
        return battery with
        {
            RatedCapacity = capacity,
            Resistance = battery.Resistance.Scaled(1 / ratio),
            Polarisation = [.. battery.Polarisation.Select(pair => pair with { Resistance = pair.Resistance / ratio })],
            TypedWells = battery.TypedWells is { } wells ? wells with { Capacity = wells.Capacity * ratio } : null,
            Lifetimes = battery.Lifetimes is { } curve
                ? new LifetimeCurve { Points = [.. curve.Points.Select(point => (point.Current * ratio, point.Lifetime))] }
                : null,
            ExponentRange = battery.ExponentRange is { } range ? (range.Lowest * ratio, range.Highest * ratio) : null,
        };
    }

    private static Scenario Replace(Scenario s, int i, Func<Battery, Battery> change) =>
        s with { Batteries = s.Batteries.SetItem(i, change(s.Batteries[i])) };
}
