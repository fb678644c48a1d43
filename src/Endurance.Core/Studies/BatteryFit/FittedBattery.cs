using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>Turns fitted numbers into the battery of a scenario.</summary>
internal static class FittedBattery
{
    /// <summary>Most health that a scenario takes; a battery above it is described by what was measured.</summary>
    public const double MostHealth = 1.5;

    /// <param name="law">Lifetimes.</param>
    /// <param name="exponent">Of Peukert's law through the pivot of <paramref name="law"/>.</param>
    /// <param name="emf">By rising charge.</param>
    /// <param name="resistance">The same at every charge.</param>
    /// <param name="rated">Where known, the battery is the rated one with a health.</param>
    public static Battery Of(LifetimeLaw law, double exponent, ImmutableArray<EmfKnot> emf, Resistance resistance, RatedCapacity? rated)
    {
        var health = rated is null ? 1 : law.HealthAgainst(rated, exponent).Value;
        var isRated = rated is not null && health <= MostHealth;
        return new Battery
        {
            Name = "measured_battery",
            Bus = "battery_bus",
            RatedCapacity = isRated ? rated!.Capacity : Charge.FromAmpereHours(law.PivotAmpereHours.Value),
            Rate = isRated ? rated!.Rate : law.PivotLifetime,
            PeukertExponent = exponent,
            Emf = new PiecewiseLinear([.. emf.Select(knot => knot.Charge)], [.. emf.Select(knot => knot.Volts.Value)]),
            Resistance = PiecewiseLinear.Constant(resistance.Ohms),
            Health = isRated ? health : 1,
            Temperature = Temperature.FromCelsius(25),
        };
    }
}
