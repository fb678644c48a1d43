using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Studies.BatteryCurves;

namespace Endurance.Reports.Plots;

/// <summary>Minutes over current of one battery, both logarithmic.</summary>
public static class BatteryCurvePlot
{
    /// <param name="scenario">Title of the scenario.</param>
    /// <param name="curve">What to draw.</param>
    public static PlotDescription Describe(string scenario, BatteryCurve curve)
    {
        ImmutableArray<PlotSeries> series =
        [
            Series("new, at 25 degC", 0, curve, row => row.LastsNew),
            Series(BatteryCurveReport.Condition(curve), 1, curve, row => row.Lasts),
            Series(BatteryCurveReport.Condition(curve) + ", kinetic model", 2, curve, row => row.LastsKinetic),
        ];
        series = [.. series.Where(line => !line.Points.IsEmpty)];
        var stated = curve.Battery.Ratings;
        var minutes = series.SelectMany(line => line.Points).Select(point => Math.Pow(10, point.Y)).Concat(stated.Select(rating => rating.Lasts.Minutes)).ToArray();
        return new PlotDescription
        {
            Title = $"{VisibleText.Shortened(curve.Battery.Name, 40)}: minutes over current, {BatteryCurveReport.End(curve)}",
            Subject = VisibleText.Shortened(scenario, 40),
            Panels =
            [
                new PlotPanel
                {
                    X = AxisScale.Logarithmic("constant current", "A", curve.Fine[0].Current.Amperes, curve.Fine[^1].Current.Amperes),
                    Y = minutes.Length == 0 ? AxisScale.Logarithmic("time", "min", 1, 10) : AxisScale.Logarithmic("time", "min", minutes.Min(), minutes.Max()),
                    Series = series,
                    Markers = [.. stated.Select(rating => new PlotMarker(Point(rating.Current, rating.Lasts), $"{CellText.Minutes(rating.Lasts)} min", 4))],
                },
            ],
            Notes =
            [
                "From full. Both scales are logarithmic.",
                .. stated.IsEmpty ? ImmutableArray<string>.Empty : ["The marked points are as stated for a new, warm battery, each to the end voltage stated with it."],
            ],
        };
    }

    private static PlotSeries Series(string name, int style, BatteryCurve curve, Func<BatteryCurveRow, Duration?> lasts) =>
        new(name, style, [.. curve.Fine.Where(row => lasts(row) is { Seconds: > 0 }).Select(row => Point(row.Current, lasts(row)!.Value))]);

    private static PlotPoint Point(Current current, Duration time) => new(Math.Log10(current.Amperes), Math.Log10(time.Minutes));
}
