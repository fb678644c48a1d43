using System.Collections.Immutable;
using Endurance.Reports.Plots;

namespace Endurance.Reports.Html;

/// <summary>Fewer points for the same curve, so that a page stays small.</summary>
internal static class CurvePoints
{
    /// <summary>The points that straight lines need to stay within a deviation of all points, measured along Y.</summary>
    /// <remarks>D. H. Douglas and T. K. Peucker, "Algorithms for the reduction of the number of points", 1973, with upright distance.</remarks>
    public static ImmutableArray<PlotPoint> Thinned(ImmutableArray<PlotPoint> points, double deviation)
    {
        if (points.Length < 3)
            return points;
        var keeps = new bool[points.Length];
        keeps[0] = keeps[^1] = true;
        var spans = new Stack<(int First, int Last)>([(0, points.Length - 1)]);
        while (spans.TryPop(out var span))
        {
            var (worst, farthest) = Farthest(points, span.First, span.Last);
            if (farthest <= deviation)
                continue;
            keeps[worst] = true;
            spans.Push((span.First, worst));
            spans.Push((worst, span.Last));
        }

        return [.. points.Where((_, i) => keeps[i])];
    }

    private static (int Index, double Distance) Farthest(ImmutableArray<PlotPoint> points, int first, int last)
    {
        var (a, b) = (points[first], points[last]);
        var slope = b.X > a.X ? (b.Y - a.Y) / (b.X - a.X) : 0;
        var (index, distance) = (first, 0.0);
        for (var i = first + 1; i < last; i++)
        {
            var off = Math.Abs(points[i].Y - a.Y - (slope * (points[i].X - a.X)));
            if (off > distance)
                (index, distance) = (i, off);
        }

        return (index, distance);
    }
}
