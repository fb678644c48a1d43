using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.Adjustment;

/// <summary>What may be varied of a battery.</summary>
internal static class BatteryQuantities
{
    private const double LeastHealth = 0.01;
    private const double MostHealth = 1.5;

    public static IEnumerable<AdjustableQuantity> Of(Scenario scenario, int i)
    {
        var name = scenario.Batteries[i].Name;
        yield return new(name + ".health", QuantityKind.Fraction, LeastHealth, MostHealth, s => s.Batteries[i].Health,
            (s, value) => Replace(s, i, battery => battery.WithHealth(value)));
        if (FollowsTemperature(scenario.Batteries[i]))
        {
            yield return new(name + ".temperature", QuantityKind.Temperature, 193.15, 423.15, s => s.Batteries[i].Temperature.Kelvin,
                (s, value) => Replace(s, i, battery => battery.WithTemperature(Temperature.FromKelvin(value))));
        }

        yield return new(name + ".charge", QuantityKind.Fraction, 0, 1, s => s.Batteries[i].InitialCharge,
            (s, value) => Replace(s, i, battery => battery with { InitialCharge = value }));
        yield return new(name + ".capacity_factor", QuantityKind.Fraction, 0.01, 2, s => s.Batteries[i].CapacityFactor,
            (s, value) => Replace(s, i, battery => battery with { CapacityFactor = value, CapacityOverTemperature = null }));
        yield return new(name + ".resistance_factor", QuantityKind.Number, 0.01, 100, s => TotalFactor(s.Batteries[i]),
            (s, value) => Replace(s, i, battery => WithTotalFactor(battery, value)));
        yield return new(name + ".peukert", QuantityKind.Number, 1, 3, s => s.Batteries[i].PeukertExponent,
            (s, value) => Replace(s, i, battery => battery with { PeukertExponent = value }));
        yield return new(name + ".capacity", QuantityKind.Charge, 36, 3.6e7, s => s.Batteries[i].RatedCapacity.Coulombs,
            (s, value) => Replace(s, i, battery => Resized(battery, Charge.FromCoulombs(value))));
    }

    /// <summary>So many times the health of every battery, each within its own bounds.</summary>
    public static Scenario ScaleAllHealth(Scenario s, double factor) =>
        s with { Batteries = [.. s.Batteries.Select(battery => battery.WithHealth(Math.Clamp(battery.Health * factor, LeastHealth, MostHealth)))] };

    /// <summary>A battery of the same make in another size: resistance falls as capacity grows, lifetimes stay those of the currents in proportion.</summary>
    public static Battery Resized(Battery battery, Charge capacity)
    {
        var ratio = capacity / battery.RatedCapacity;
        return battery with
        {
            RatedCapacity = capacity,
            Resistance = battery.Resistance.Scaled(1 / ratio),
            ResistanceWhenNew = battery.ResistanceWhenNew?.Scaled(1 / ratio),
            Polarisation = [.. battery.Polarisation.Select(pair => pair with { Resistance = pair.Resistance / ratio })],
            TypedWells = battery.TypedWells is { } wells ? wells with { Capacity = wells.Capacity * ratio } : null,
            Lifetimes = battery.Lifetimes is { } curve
                ? new LifetimeCurve { Points = [.. curve.Points.Select(point => (point.Current * ratio, point.Lifetime))] }
                : null,
            ExponentRange = battery.ExponentRange is { } range ? (range.Lowest * ratio, range.Highest * ratio) : null,
        };
    }

    private static bool FollowsTemperature(Battery battery) =>
        battery.CapacityOverTemperature is not null || battery.ResistanceOverTemperature is not null || battery.Protection?.NoChargeBelow is not null;

    /// <summary>Resistance over that of the same battery new and at 25 degC.</summary>
    private static double TotalFactor(Battery battery) =>
        battery.ResistanceFactor / (battery.ResistanceWhenNew is null ? 1 : battery.Health);

    /// <summary>A factor of one's own replaces what temperature and health imply.</summary>
    private static Battery WithTotalFactor(Battery battery, double factor) => battery with
    {
        ResistanceFactor = factor,
        Resistance = battery.ResistanceWhenNew ?? battery.Resistance,
        ResistanceWhenNew = null,
        ResistanceOverTemperature = null,
    };

    private static Scenario Replace(Scenario s, int i, Func<Battery, Battery> change) =>
        s with { Batteries = s.Batteries.SetItem(i, change(s.Batteries[i])) };
}
