using Endurance.Numerics;

namespace Endurance.Studies.Spread;

/// <summary>Points in a unit cube such that every coordinate takes one value in each of as many equal slices as there are points.</summary>
/// <remarks>McKay, Beckman and Conover, Technometrics 21 (1979) 239.</remarks>
internal static class LatinHypercube
{
    /// <summary>Rows are points; the same for the same seed on any machine and thread count. Every coordinate is above 0 and below 1.</summary>
    public static double[][] Draw(int points, int dimensions, int seed)
    {
        var random = new SplitMix(seed);
        var rows = new double[points][];
        for (var i = 0; i < points; i++)
            rows[i] = new double[dimensions];
        var order = new int[points];
        for (var d = 0; d < dimensions; d++)
        {
            for (var i = 0; i < points; i++)
                order[i] = i;
            for (var i = points - 1; i > 0; i--)
            {
                var j = random.Next(i + 1);
                (order[i], order[j]) = (order[j], order[i]);
            }

            for (var i = 0; i < points; i++)
                rows[i][d] = Math.Clamp((order[i] + random.NextDouble()) / points, double.Epsilon, 1 - 1e-16);
        }

        return rows;
    }
}
