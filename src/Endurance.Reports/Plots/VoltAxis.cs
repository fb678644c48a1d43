using System.Collections.Immutable;

namespace Endurance.Reports.Plots;

/// <summary>A voltage axis that shows the part in which something happens instead of the empty span down to zero.</summary>
internal static class VoltAxis
{
    /// <summary>Below this a bus is as good as dead, and the curve may leave the chart.</summary>
    private const double DeadVolts = 1;

    public static PlotAxis For(IEnumerable<PlotSeries> series, IEnumerable<double> cutoffs)
    {
        var shown = series.SelectMany(line => line.Points).Select(point => point.Y).Where(volts => volts > DeadVolts).Concat(cutoffs).ToImmutableArray();
        return shown.IsEmpty
            ? AxisScale.Round("bus voltage", "V", 0, DeadVolts)
            : AxisScale.Round("bus voltage", "V", Math.Max(0, shown.Min() - 0.5), shown.Max() + 0.2);
    }

    /// <summary>Says where the axis starts when a curve leaves the chart; empty when none does.</summary>
    public static ImmutableArray<string> Note(PlotAxis axis, IEnumerable<PlotSeries> series) =>
        series.Any(line => line.Points.Any(point => point.Y < axis.Low))
            ? [$"The voltage axis starts at {RoundedNumber.Short(axis.Low, 3)} V: a curve that leaves through the bottom goes to 0 V."]
            : [];
}
