using System.Collections.Immutable;
using Endurance.Numerics;

namespace Endurance.Studies.BatteryFit;

/// <summary>Fits one EMF table over charge to the volts of several discharges.</summary>
internal static class EmfTableFit
{
    /// <summary>Closer together near the end, where the curve bends.</summary>
    private static readonly ImmutableArray<double> Knots = [0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];

    /// <summary>More points of one run would only slow the fit down.</summary>
    private const int MostPerRun = 300;

    /// <param name="observations">Charge and EMF of each run; at least one observation in all.</param>
    /// <param name="endVolts">EMF at charge 0.</param>
    /// <returns>The table, and whether rows had to be levelled so that it does not fall.</returns>
    public static (ImmutableArray<EmfKnot> Table, bool IsLevelled) Of(ImmutableArray<ImmutableArray<(double Charge, double Volts)>> observations, double endVolts)
    {
        var points = observations.SelectMany(Thinned).ToArray();
        var knots = Covered([.. points.Select(point => point.Charge)]);
        double[] volts = [.. points.Select(point => point.Volts)];
        double[] Model(double[] parameters)
        {
            var table = new PiecewiseLinear(knots, [endVolts, .. parameters]);
            return [.. points.Select(point => table.At(point.Charge))];
        }

        var fit = LeastSquares.Fit(Model, volts, [.. knots.Skip(1).Select(_ => volts.Average())]);
        var level = Rising([.. fit.Values], endVolts);
        var isLevelled = level.Where((value, i) => Math.Abs(value - fit.Values[i]) > 1e-6).Any();
        return ([new EmfKnot(0, new FittedValue(endVolts, null)), .. level.Select((value, i) => new EmfKnot(knots[i + 1], fit[i] with { Value = value }))], isLevelled);
    }

    private static IEnumerable<(double Charge, double Volts)> Thinned(ImmutableArray<(double Charge, double Volts)> run)
    {
        var count = Math.Min(run.Length, MostPerRun);
        return Enumerable.Range(0, count).Select(i => run[(int)((long)i * run.Length / count)]);
    }

    /// <summary>The knots with a point in every span between them; 0 and 1 always stay.</summary>
    private static ImmutableArray<double> Covered(double[] charges)
    {
        var kept = new List<double> { 0 };
        foreach (var knot in Knots.Skip(1))
        {
            if (charges.Any(charge => charge > kept[^1] && charge <= knot))
                kept.Add(knot);
        }

        if (kept[^1] < 1 && kept.Count > 1)
            kept.RemoveAt(kept.Count - 1);
        if (kept[^1] < 1)
            kept.Add(1);
        return [.. kept];
    }

    /// <summary>The nearest values that do not fall (pool adjacent violators), none below the first row.</summary>
    private static double[] Rising(double[] values, double floor)
    {
        var pools = new List<(double Sum, int Count)>();
        foreach (var value in values)
        {
            pools.Add((Math.Max(value, floor), 1));
            while (pools.Count > 1 && pools[^2].Sum / pools[^2].Count > pools[^1].Sum / pools[^1].Count)
            {
                pools[^2] = (pools[^2].Sum + pools[^1].Sum, pools[^2].Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }
        }

        return [.. pools.SelectMany(pool => Enumerable.Repeat(pool.Sum / pool.Count, pool.Count))];
    }
}
