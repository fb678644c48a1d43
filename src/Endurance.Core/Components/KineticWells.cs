using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Parameters of the kinetic battery model, new and warm.</summary>
/// <remarks>Manwell and McGowan, "Lead acid battery storage model for hybrid energy systems", Solar Energy 50 (1993) 399.</remarks>
public sealed record KineticWells
{
    /// <summary>Share c of the whole charge that stands in the available well; above 0, below 1.</summary>
    public required double Available { get; init; }

    /// <summary>Rate constant k' per hour; above zero.</summary>
    public required double RatePerHour { get; init; }

    /// <summary>Charge q_max of both wells together when full; above zero.</summary>
    public required Charge Capacity { get; init; }

    /// <summary>Charge that a constant current delivers in a time, from full to an empty available well.</summary>
    /// <remarks>q(T) = q_max k c T / (1 - exp(-kT) + c (kT - 1 + exp(-kT))), Manwell and McGowan (1993).</remarks>
    public Charge CapacityIn(Duration time) =>
        Capacity / (1 + (((1 / Available) - 1) * MeanDecay(RatePerHour * time.Hours)));

    /// <summary>Time in which a constant current above zero empties the available well, from full.</summary>
    public Duration LifetimeAt(Current drain)
    {
        double Left(double hours) => CapacityIn(Duration.FromHours(hours)).AmpereHours - (drain.Amperes * hours);
        var longest = Capacity.AmpereHours / drain.Amperes;
        const double outside = 1e-6, accuracy = 1e-13;
        return Duration.FromHours(MathNet.Numerics.RootFinding.Brent.FindRoot(
            Left, Available * longest * (1 - outside), longest * (1 + outside), longest * accuracy, 300));
    }

    /// <summary>The wells whose lifetimes pass through three points.</summary>
    /// <param name="points">Three different times with the charge a constant current delivers in each; the charge rises with the time.</param>
    /// <returns><see langword="null"/> when no wells have these lifetimes: the battery loses too little, or too much, at high current.</returns>
    /// <remarks>1/q(T) is linear in the mean decay (1 - exp(-kT))/(kT), so two ratios leave one equation for k.</remarks>
    public static KineticWells? Through(params ReadOnlySpan<(Duration Time, Charge Delivered)> points)
    {
        if (points.Length != 3)
            throw new ArgumentException("Three points fix the wells.", nameof(points));
        Span<double> hours = [points[0].Time.Hours, points[1].Time.Hours, points[2].Time.Hours];
        Span<double> inverse = [1 / points[0].Delivered.AmpereHours, 1 / points[1].Delivered.AmpereHours, 1 / points[2].Delivered.AmpereHours];
        hours.Sort(inverse);
        double h0 = hours[0], h1 = hours[1], h2 = hours[2];
        var ratio = (inverse[0] - inverse[2]) / (inverse[1] - inverse[2]);
        double Excess(double logRate)
        {
            var k = Math.Exp(logRate);
            var last = MeanDecay(k * h2);
            return MeanDecay(k * h0) - last - (ratio * (MeanDecay(k * h1) - last));
        }

        const double slowest = -9, fastest = 6, accuracy = 1e-14;
        if (!double.IsFinite(ratio) || !MathNet.Numerics.RootFinding.Brent.TryFindRoot(Excess, slowest, fastest, accuracy, 200, out var root))
            return null;
        var rate = Math.Exp(root);
        var slope = (inverse[0] - inverse[2]) / (MeanDecay(rate * h0) - MeanDecay(rate * h2));
        var whole = inverse[2] - (slope * MeanDecay(rate * h2));
        if (!(slope > 0) || !(whole > 0))
            return null;
        return new KineticWells { Available = 1 / (1 + (slope / whole)), RatePerHour = rate, Capacity = Charge.FromAmpereHours(1 / whole) };
    }

    /// <summary>(1 - exp(-x))/x, the mean of exp over 0 to -x.</summary>
    private static double MeanDecay(double x) => Math.Abs(x) < 1e-5 ? 1 - (x / 2) + (x * x / 6) : (1 - Math.Exp(-x)) / x;
}
