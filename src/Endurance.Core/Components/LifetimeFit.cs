using System.Collections.Immutable;
using Endurance.Numerics;
using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Turns the times of a data sheet, which end at a voltage, into times to exhaustion.</summary>
internal static class LifetimeFit
{
    /// <summary>Slices of charge over which a constant-power discharge is summed.</summary>
    private const int Slices = 2000;

    private const double PowerAccuracy = 1e-5;
    private const int MostRounds = 200;

    public static LifetimeCurve Of(ImmutableArray<DischargePoint> points, PiecewiseLinear emf, PiecewiseLinear ohms)
    {
        var entries = points.Select(point => point.Current is { } current
            ? AtCurrent(point, current, emf, ohms)
            : Guess(point, emf, ohms)).ToArray();
        for (var round = 0; round < MostRounds; round++)
        {
            var curve = Sorted(entries);
            if (curve.LeastSpacing <= 1)
                return curve;
            var worst = 0.0;
            for (var i = 0; i < points.Length; i++)
            {
                if (points[i].Power is not { } power)
                    continue;
                var (time, mean) = AtPower(power.Watts, points[i].EndVoltage.Volts, curve, emf, ohms);
                var ratio = points[i].Lasts.Seconds / time;
                worst = Math.Max(worst, Math.Abs(ratio - 1));
                entries[i] = (Current.FromAmperes(mean), curve.At(Current.FromAmperes(mean)) * ratio);
            }

            if (worst <= PowerAccuracy)
                return curve;
        }

        return Sorted(entries);
    }

    /// <summary>Charge at which the terminal voltage reaches an end voltage at a constant current; 0 when it never does.</summary>
    public static double ChargeAtEnd(double amperes, double endVolts, PiecewiseLinear emf, PiecewiseLinear ohms) =>
        LastCharge(z => emf.At(z) - (amperes * ohms.At(z)) - endVolts, emf, ohms);

    private static (Current Current, Duration Lifetime) AtCurrent(DischargePoint point, Current current, PiecewiseLinear emf, PiecewiseLinear ohms)
    {
        var end = ChargeAtEnd(current.Amperes, point.EndVoltage.Volts, emf, ohms);
        return (current, point.Lasts / (1 - end));
    }

    private static (Current Current, Duration Lifetime) Guess(DischargePoint point, PiecewiseLinear emf, PiecewiseLinear ohms)
    {
        var amperes = CurrentAt(point.Power!.Value.Watts, emf.At(0.5), ohms.At(0.5));
        return (Current.FromAmperes(amperes), point.Lasts);
    }

    /// <summary>Seconds from full to the end voltage at a constant power, and the mean current over that time.</summary>
    private static (double Seconds, double MeanAmperes) AtPower(double watts, double endVolts, LifetimeCurve curve, PiecewiseLinear emf, PiecewiseLinear ohms)
    {
        var end = LastCharge(z => VoltsAt(watts, emf.At(z), ohms.At(z)) - endVolts, emf, ohms);
        double seconds = 0, coulombs = 0;
        for (var i = 0; i < Slices; i++)
        {
            var z = end + ((1 - end) * (i + 0.5) / Slices);
            var amperes = CurrentAt(watts, emf.At(z), ohms.At(z));
            var slice = (1 - end) / Slices * curve.At(Current.FromAmperes(amperes)).Seconds;
            seconds += slice;
            coulombs += slice * amperes;
        }

        return (seconds, coulombs / seconds);
    }

    /// <summary>Terminal voltage at a power; zero where the battery cannot give it.</summary>
    public static double VoltsAt(double watts, double emf, double ohms)
    {
        var square = (emf * emf) - (4 * ohms * watts);
        return square <= 0 ? 0 : (emf + Math.Sqrt(square)) / 2;
    }

    private static double CurrentAt(double watts, double emf, double ohms) => watts / Math.Max(VoltsAt(watts, emf, ohms), emf / 2);

    /// <summary>Where a quantity that is positive at full charge first falls to zero on the way down; 0 when it never does.</summary>
    private static double LastCharge(Func<double, double> excess, PiecewiseLinear emf, PiecewiseLinear ohms)
    {
        var knots = emf.X.Concat(ohms.X).Distinct().OrderDescending().ToArray();
        for (var i = 1; i < knots.Length; i++)
        {
            if (excess(knots[i]) > 0)
                continue;
            if (excess(knots[i - 1]) <= 0)
                return knots[i - 1];
            return MathNet.Numerics.RootFinding.Brent.FindRoot(excess, knots[i], knots[i - 1], 1e-12, 200);
        }

        return 0;
    }

    private static LifetimeCurve Sorted((Current Current, Duration Lifetime)[] entries) =>
        new() { Points = [.. entries.OrderBy(entry => entry.Current.Amperes)] };
}
