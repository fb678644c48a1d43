using System.Collections.Immutable;
using Endurance.Studies.BatteryFit;

namespace Endurance.Reports.Plots;

/// <summary>Measured and fitted volts of every discharge of a log.</summary>
public static class DischargeFitPlot
{
    private const int MostPoints = 400;

    /// <summary>Styles repeat their colours after so many, with other dashes: a fit has the colour of its run.</summary>
    private const int ColoursApart = 7;

    /// <param name="log">Name of the log.</param>
    /// <param name="result">Its fit.</param>
    public static PlotDescription Describe(string log, BatteryFitResult result)
    {
        var series = result.Runs.SelectMany((run, i) => new[]
        {
            new PlotSeries($"run {run.Run.Number}, {RoundedNumber.Fixed(run.Run.MeanCurrent.Amperes, 2)} A", i, Points(run.Run.Points)),
            new PlotSeries($"run {run.Run.Number}, {FitText.Role(run)}", i + ColoursApart, Points(run.Modelled)),
        }).Where(line => !line.Points.IsEmpty).ToImmutableArray();
        var ends = result.EndVoltages.Select(end => end.Volts).ToList();
        return new PlotDescription
        {
            Title = "Discharges: measured and fitted",
            Subject = VisibleText.Shortened(log, 40),
            Panels =
            [
                new PlotPanel
                {
                    X = AxisScale.Minutes(result.Runs.Max(run => run.Run.Length.Minutes)) with { Label = "minutes since the start of the discharge" },
                    Y = VoltAxis.For(series, ends) with { Label = "terminal voltage" },
                    Series = series,
                    Lines = [.. result.EndVoltages.Select(end => new ReferenceLine(ReferenceLineKind.Cutoff, end.Volts, $"end of discharge {FitText.Volts(end)}"))],
                },
            ],
        };
    }

    private static ImmutableArray<PlotPoint> Points(ImmutableArray<RunPoint> points)
    {
        var count = Math.Min(points.Length, MostPoints);
        return [.. Enumerable.Range(0, count)
            .Select(i => points[count == 1 ? 0 : (int)((long)i * (points.Length - 1) / (count - 1))])
            .Select(point => new PlotPoint(point.Seconds / 60, point.Volts))];
    }
}
