using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Reports.Plots;

/// <summary>Recorded signals as points over minutes.</summary>
internal static class TracePoints
{
    private const int MostPoints = 4000;

    /// <summary>Spans along the time axis that can still be told apart.</summary>
    private const int PlotWidth = 800;

    /// <summary>The points of one signal; a run that ended before the horizon has nothing left, so volts and amperes end at zero.</summary>
    public static ImmutableArray<PlotPoint> Of(Trace trace, TraceColumn column, double scale = 1, bool endsAtZero = true, bool endedEarly = false)
    {
        var points = ImmutableArray.CreateBuilder<PlotPoint>(column.Values.Length + 1);
        for (var i = 0; i < column.Values.Length; i++)
            points.Add(new PlotPoint(trace.Seconds[i] / 60, column.Values[i] * scale));
        if (endsAtZero && endedEarly && points.Count > 0 && Math.Abs(points[^1].Y) > 0)
            points.Add(new PlotPoint(points[^1].X, 0));
        return points.Count > MostPoints ? Thinned(points.ToImmutable()) : points.ToImmutable();
    }

    /// <summary>The first, lowest, highest and last point of each of as many equal spans as a plot is wide; it looks the same.</summary>
    private static ImmutableArray<PlotPoint> Thinned(ImmutableArray<PlotPoint> points)
    {
        var thinned = ImmutableArray.CreateBuilder<PlotPoint>();
        var width = points[^1].X / PlotWidth;
        for (var start = 0; start < points.Length;)
        {
            var end = start + 1;
            int lowest = start, highest = start;
            for (; end < points.Length && points[end].X < points[start].X + width; end++)
            {
                lowest = points[end].Y < points[lowest].Y ? end : lowest;
                highest = points[end].Y > points[highest].Y ? end : highest;
            }

            foreach (var kept in new SortedSet<int> { start, lowest, highest, end - 1 })
                thinned.Add(points[kept]);
            start = end;
        }

        return thinned.ToImmutable();
    }

    /// <summary>Nothing is left before the horizon; a run that broke off is not dead.</summary>
    public static bool EndedEarly(Scenario scenario, SimulationResult run) => run.BreakOff is null && run.End < scenario.Horizon;

    /// <summary>Volts at an instant, before a jump that falls on it; the nearest recorded end outside the recording.</summary>
    public static double ValueAt(ImmutableArray<PlotPoint> points, double x)
    {
        for (var i = 0; i < points.Length; i++)
        {
            if (points[i].X < x)
                continue;
            if (i == 0 || points[i].X <= x)
                return points[i].Y;
            var left = points[i - 1];
            return left.Y + ((points[i].Y - left.Y) * (x - left.X) / (points[i].X - left.X));
        }

        return points[^1].Y;
    }
}
