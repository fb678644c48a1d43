using System.Collections.Immutable;

namespace Endurance.Reports.Plots;

/// <summary>Minutes of every case over a swept quantity.</summary>
public static class SweepPlot
{
    /// <param name="result">What to draw.</param>
    public static PlotDescription Describe(SweepResult result)
    {
        double At(Studies.Sweeps.SweepPoint point) => QuantityText.InUnit(result.Quantity.Kind, point.Value);
        var points = result.Points.OrderBy(At).ToImmutableArray();
        var horizon = result.Scenario.Horizon;
        var series = result.Scenario.FailureCases
            .Select((one, c) => new PlotSeries(one.Name, c, [.. points.Select(point => new PlotPoint(At(point), (point.Cases[c].Endurance ?? horizon).Minutes))]))
            .ToImmutableArray();
        var required = result.Scenario.Requirements.Select(requirement => requirement.Endure).Distinct().Order().ToImmutableArray();
        var highest = series.SelectMany(line => line.Points).Select(point => point.Y).Concat(required.Select(time => time.Minutes)).DefaultIfEmpty(1).Max();
        return new PlotDescription
        {
            Title = $"Minutes over {VisibleText.Shortened(result.Quantity.Path, 50)}",
            Subject = VisibleText.Shortened(result.Scenario.Title, 40),
            Panels =
            [
                new PlotPanel
                {
                    X = AxisScale.Round(VisibleText.Shortened(result.Quantity.Path, 50), result.Unit.Length == 0 ? "number" : result.Unit, At(points[0]), At(points[^1])),
                    Y = AxisScale.Round("endurance", "min", 0, highest * 1.04),
                    Series = series,
                    Lines = [.. required.Select(time => new ReferenceLine(ReferenceLineKind.LevelRequirement, time.Minutes, $"required {CellText.RoundMinutes(time)} min{OfCase(result, time)}"))],
                },
            ],
            Notes = points.Any(point => point.Cases.Any(one => one.Endurance is null))
                ? [$"A curve at {CellText.RoundMinutes(horizon)} min means: not lost within the time simulated."]
                : [],
        };
    }

    /// <summary>Names the cases of a requirement that does not hold for all.</summary>
    private static string OfCase(SweepResult result, Quantities.Duration time)
    {
        var same = result.Scenario.Requirements.Where(requirement => requirement.Endure == time).ToImmutableArray();
        return same.Any(requirement => requirement.Case is null)
            ? ""
            : VisibleText.Shortened($" ({string.Join(", ", same.Select(requirement => requirement.Case).Distinct(StringComparer.Ordinal))})", 34);
    }
}
