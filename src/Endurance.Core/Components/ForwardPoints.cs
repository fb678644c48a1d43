using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Finds the diode parameters behind two or more forward points, V = n k T/q ln(I/Is + 1) + I Rs.</summary>
/// <remarks>
/// Gauss-Newton on ln Is and Rs with n fixed: two points are met exactly, more in the least-squares sense of volts.
/// Where Rs would fall below <see cref="LeastSeriesResistance"/> it is held there and n is fitted in its place.
/// </remarks>
public static class ForwardPoints
{
    /// <summary>Series resistance below which the ideality is fitted instead.</summary>
    public static readonly Resistance LeastSeriesResistance = Resistance.FromMilliohms(0.1);

    private const int MostRounds = 100;
    private const double SettledVolts = 1e-13;

    // Beyond e^-300 A or e^3 A the numbers are no diode's, and exp is still far from underflow.
    private const double LowestLogSaturation = -300;
    private const double HighestLogSaturation = 3;

    /// <param name="points">At least two, current and drop strictly rising.</param>
    /// <param name="ideality">Emission coefficient n, above zero.</param>
    /// <param name="junction">Temperature at which the points hold.</param>
    /// <returns><see langword="null"/> when no diode of this form comes near the points.</returns>
    /// <exception cref="ArgumentException">Fewer than two points.</exception>
    public static ForwardFit? Fit(ImmutableArray<ForwardPoint> points, double ideality, Temperature junction)
    {
        if (points.IsDefault || points.Length < 2)
            throw new ArgumentException("A forward curve needs at least two points.", nameof(points));
        var thermal = JunctionDiode.BoltzmannOverCharge * junction.Kelvin;
        var free = Solve(points, new Curve(0, ideality * thermal, 0), fitsSlope: false);
        if (free is { } fit && fit.Ohms >= LeastSeriesResistance.Ohms)
            return Described(points, fit, thermal);
        var held = Solve(points, new Curve(0, ideality * thermal, LeastSeriesResistance.Ohms), fitsSlope: true);
        return held is { SlopeVolts: > 0 } other ? Described(points, other, thermal) : null;
    }

    private static ForwardFit Described(ImmutableArray<ForwardPoint> points, Curve curve, double thermal) => new(
        Current.FromAmperes(Math.Exp(curve.LogSaturation)),
        curve.SlopeVolts / thermal,
        Resistance.FromOhms(curve.Ohms),
        Voltage.FromVolts(points.Max(point => Math.Abs(curve.VoltsAt(point.Current.Amperes) - point.Drop.Volts))));

    private static Curve? Solve(ImmutableArray<ForwardPoint> points, Curve start, bool fitsSlope)
    {
        var curve = start with { LogSaturation = StartingLogSaturation(points[0], start) };
        for (var round = 0; round < MostRounds; round++)
        {
            double aa = 0, ab = 0, bb = 0, ar = 0, br = 0;
            foreach (var point in points)
            {
                var amps = point.Current.Amperes;
                var a = curve.SlopeAgainstLogSaturation(amps);
                var b = fitsSlope ? curve.LogRatio(amps) : amps;
                var miss = point.Drop.Volts - curve.VoltsAt(amps);
                aa += a * a;
                ab += a * b;
                bb += b * b;
                ar += a * miss;
                br += b * miss;
            }

            var determinant = (aa * bb) - (ab * ab);
            if (!(determinant > 0))
                return null;
            var stepLog = ((bb * ar) - (ab * br)) / determinant;
            var stepOther = ((aa * br) - (ab * ar)) / determinant;
            curve = curve.Moved(stepLog, stepOther, fitsSlope);
            if (!double.IsFinite(curve.SlopeVolts) || !double.IsFinite(curve.Ohms) || !double.IsFinite(curve.LogSaturation)
                || curve.LogSaturation < LowestLogSaturation || curve.LogSaturation > HighestLogSaturation)
                return null;
            if (Math.Abs(stepLog * curve.SlopeVolts) < SettledVolts && Math.Abs(stepOther) < SettledVolts)
                return curve;
        }

        return null;
    }

    private static double StartingLogSaturation(ForwardPoint first, Curve start) =>
        Math.Log(first.Current.Amperes) - (first.Drop.Volts / start.SlopeVolts);

    /// <summary>The forward curve in the three numbers that are fitted.</summary>
    /// <param name="LogSaturation">ln of the saturation current in ampere.</param>
    /// <param name="SlopeVolts">n k T/q, volt.</param>
    /// <param name="Ohms">Series resistance, ohm; may be negative while it is sought.</param>
    private readonly record struct Curve(double LogSaturation, double SlopeVolts, double Ohms)
    {
        public double LogRatio(double amps) => Math.Log((amps / Math.Exp(LogSaturation)) + 1);

        public double VoltsAt(double amps) => (SlopeVolts * LogRatio(amps)) + (amps * Ohms);

        public double SlopeAgainstLogSaturation(double amps) => -SlopeVolts * amps / (amps + Math.Exp(LogSaturation));

        public Curve Moved(double logStep, double otherStep, bool movesSlope) => movesSlope
            ? new(LogSaturation + logStep, SlopeVolts + otherStep, Ohms)
            : new(LogSaturation + logStep, SlopeVolts, Ohms + otherStep);
    }
}
