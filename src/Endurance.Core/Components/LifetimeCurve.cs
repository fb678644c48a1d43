using System.Collections.Immutable;
using Endurance.Numerics;
using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Time to exhaustion of a new, warm battery over its constant discharge current: straight in log-log between the points.</summary>
/// <remarks>Below the lowest current the capacity stays that of the lowest; above the highest the last span goes on.</remarks>
public sealed record LifetimeCurve
{
    /// <summary>By rising current, at least one; lifetimes above zero.</summary>
    public required ImmutableArray<(Current Current, Duration Lifetime)> Points { get; init; }

    public Current Lowest => Points[0].Current;

    public Current Highest => Points[^1].Current;

    /// <summary>Charge delivered at the lowest current.</summary>
    public Charge LowestCurrentCapacity => Points[0].Current * Points[0].Lifetime;

    /// <summary>Smallest ratio of a current to the one below it; infinite for a single point.</summary>
    public double LeastSpacing =>
        Enumerable.Range(1, Points.Length - 1).Select(i => Points[i].Current / Points[i - 1].Current).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>Time to exhaustion from full at a current above zero.</summary>
    public Duration At(Current current) => Duration.FromSeconds(SecondsAt(current.Amperes));

    /// <summary>The same in seconds at amperes; for the time loop.</summary>
    internal double SecondsAt(double amperes)
    {
        if (amperes <= Lowest.Amperes || Points.Length == 1)
            return LowestCurrentCapacity.Coulombs / amperes;
        var span = 1;
        while (span < Points.Length - 1 && amperes > Points[span].Current.Amperes)
            span++;
        var (current, lifetime) = Points[span - 1];
        return lifetime.Seconds * Math.Pow(amperes / current.Amperes, -ExponentOf(span));
    }

    /// <summary>Peukert's exponent of the span that ends at a point; at least 1 in a battery that loses capacity at high current.</summary>
    public double ExponentOf(int span) =>
        Math.Log(Points[span - 1].Lifetime / Points[span].Lifetime) / Math.Log(Points[span].Current / Points[span - 1].Current);

    /// <summary>The curve that sends a battery with this EMF and resistance through every point of a data sheet.</summary>
    /// <param name="points">At least one; currents, or mean currents of powers, all different.</param>
    /// <param name="emf">Volts over charge.</param>
    /// <param name="ohms">Settled resistance over charge at 25 degC.</param>
    public static LifetimeCurve Through(ImmutableArray<DischargePoint> points, PiecewiseLinear emf, PiecewiseLinear ohms) =>
        LifetimeFit.Of(points, emf, ohms);

    /// <summary>Charge at which the terminal voltage reaches an end voltage at a constant current; 0 when it never does, 1 when it stands below it from the start.</summary>
    /// <param name="current">Of the discharge.</param>
    /// <param name="end">Terminal voltage.</param>
    /// <param name="emf">Volts over charge.</param>
    /// <param name="ohms">Settled resistance over charge.</param>
    public static double ChargeAtEnd(Current current, Voltage end, PiecewiseLinear emf, PiecewiseLinear ohms) =>
        LifetimeFit.ChargeAtEnd(current.Amperes, end.Volts, emf, ohms);

    public bool Equals(LifetimeCurve? other) => other is not null && Points.SequenceEqual(other.Points);

    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0]);
}
