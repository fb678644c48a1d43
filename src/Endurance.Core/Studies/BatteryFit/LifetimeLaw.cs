using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>Time to the end of discharge over constant current: L (I_pivot / I)^k.</summary>
public sealed record LifetimeLaw
{
    /// <summary>Geometric mean of the currents of the fit, where the law is best known.</summary>
    public required Current Pivot { get; init; }

    /// <summary>Hours to the end at <see cref="Pivot"/>.</summary>
    public required FittedValue PivotHours { get; init; }

    public required FittedValue Exponent { get; init; }

    /// <summary>Whether the exponent came out of the log.</summary>
    public required bool IsExponentMeasured { get; init; }

    /// <summary>Whether the exponent was known from elsewhere; neither measured nor given it is 1, for want of anything better.</summary>
    public required bool IsExponentGiven { get; init; }

    /// <summary>Covariance of ln(hours) and the exponent; zero when either has no standard error.</summary>
    internal double Covariance { get; init; }

    public Duration PivotLifetime => Duration.FromHours(PivotHours.Value);

    /// <summary>Ampere-hours to the end at <see cref="Pivot"/>.</summary>
    public FittedValue PivotAmpereHours => PivotHours.Times(Pivot.Amperes);

    /// <summary>Time to the end at a current, as a fraction of what the label promises for it with the same exponent.</summary>
    public FittedValue HealthAgainst(RatedCapacity rated) => HealthAgainst(rated, Exponent.Value);

    /// <summary>The same with another exponent through the pivot.</summary>
    internal FittedValue HealthAgainst(RatedCapacity rated, double exponent)
    {
        var stretch = Math.Log(Pivot / rated.Current);
        var health = PivotHours.Value * Math.Exp(exponent * stretch) / rated.Rate.Hours;
        if (PivotHours.StandardError is not { } hoursError)
            return new FittedValue(health, null);
        var relative = hoursError / PivotHours.Value;
        var exponentError = Exponent.StandardError ?? 0;
        var variance = (relative * relative) + (stretch * stretch * exponentError * exponentError) + (2 * stretch * Covariance);
        return new FittedValue(health, health * Math.Sqrt(Math.Max(0, variance)));
    }
}
