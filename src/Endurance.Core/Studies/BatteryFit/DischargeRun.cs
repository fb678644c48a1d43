using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>One discharge of a log, from the instant the load comes on until it goes off.</summary>
public sealed record DischargeRun
{
    /// <summary>From one, in order of time.</summary>
    public required int Number { get; init; }

    /// <summary>From the first row of the log.</summary>
    public required Duration Start { get; init; }

    /// <summary>By strictly rising time from zero; at least two.</summary>
    public required ImmutableArray<RunPoint> Points { get; init; }

    /// <summary>Before the load came on; <see langword="null"/>: the log does not show it.</summary>
    public Voltage? RestVoltage { get; init; }

    /// <summary>Taken out by the run before this one and not put back in between, by a log that shows the whole time between; <see langword="null"/>: it does not, or there is none.</summary>
    public Charge? Missing { get; init; }

    /// <summary>Mean over the discharge; <see langword="null"/>: not logged.</summary>
    public Temperature? Temperature { get; init; }

    public Duration Length => Duration.FromSeconds(Points[^1].Seconds);

    public Charge Delivered => Charge.FromCoulombs(LifeUsed(1, 1, Length));

    /// <summary>Charge over time.</summary>
    public Current MeanCurrent => Current.FromAmperes(Delivered.Coulombs / Length.Seconds);

    /// <summary>Lowest terminal voltage, lone outliers aside.</summary>
    public Voltage LowestVoltage => Voltage.FromVolts(LowestEmf(0));

    /// <summary>Time to a terminal voltage; <see langword="null"/>: not reached.</summary>
    public Duration? TimeTo(Voltage end) => TimeToEmf(end.Volts, 0);

    /// <summary>Time until terminal volts plus amperes times <paramref name="ohms"/> have fallen to a level; <see langword="null"/>: not reached.</summary>
    internal Duration? TimeToEmf(double volts, double ohms)
    {
        var before = Steady(0, ohms);
        if (before <= volts)
            return Duration.Zero;
        for (var i = 1; i < Points.Length; i++)
        {
            var here = Steady(i, ohms);
            if (here <= volts)
            {
                var part = (before - volts) / (before - here);
                return Duration.FromSeconds(Points[i - 1].Seconds + (part * (Points[i].Seconds - Points[i - 1].Seconds)));
            }

            before = here;
        }

        return null;
    }

    /// <summary>Lowest of terminal volts plus amperes times <paramref name="ohms"/>, lone outliers aside.</summary>
    internal double LowestEmf(double ohms) => Enumerable.Range(0, Points.Length).Min(i => Steady(i, ohms));

    /// <summary>Seconds at a constant current that use as much life as this run does until an instant: the integral of (I / I_pivot)^k.</summary>
    internal double LifeUsed(double exponent, double pivotAmperes, Duration until)
    {
        double used = 0;
        for (var i = 1; i < Points.Length && Points[i - 1].Seconds < until.Seconds; i++)
            used += Slice(Points[i - 1], Points[i], exponent, pivotAmperes, until.Seconds);
        return used;
    }

    /// <summary>The same at every point.</summary>
    internal double[] LifeUsedAtPoints(double exponent, double pivotAmperes)
    {
        var used = new double[Points.Length];
        for (var i = 1; i < Points.Length; i++)
            used[i] = used[i - 1] + Slice(Points[i - 1], Points[i], exponent, pivotAmperes, Points[i].Seconds);
        return used;
    }

    private static double Slice(RunPoint from, RunPoint to, double exponent, double pivotAmperes, double until)
    {
        var seconds = Math.Min(to.Seconds, until) - from.Seconds;
        double Rate(double amperes) => Math.Pow(Math.Max(amperes, 0) / pivotAmperes, exponent);
        return seconds * (Rate(from.Amperes) + Rate(to.Amperes)) / 2;
    }

    /// <summary>Median of a point and its neighbours: one wild reading must not end a discharge.</summary>
    private double Steady(int i, double ohms)
    {
        double At(int index) => Points[index].Volts + (Points[index].Amperes * ohms);
        if (i == 0 || i == Points.Length - 1)
            return At(i);
        var (a, b, c) = (At(i - 1), At(i), At(i + 1));
        return Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));
    }
}
