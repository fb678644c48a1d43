using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Studies.Spread;

namespace Endurance.Reports.Plots;

/// <summary>How the minutes of one case are spread: a histogram.</summary>
public static class SpreadPlot
{
    private const int FewestColumns = 8;
    private const int MostColumns = 40;

    /// <summary><see langword="null"/> when no sample is lost within the horizon.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="one">The case to draw.</param>
    public static PlotDescription? Describe(SpreadResult result, SpreadCase one)
    {
        ImmutableArray<double> minutes = [.. one.Seconds.Where(double.IsFinite).Select(seconds => seconds / 60)];
        if (minutes.IsEmpty)
            return null;
        var columns = Columns(minutes, one.Seconds.Length);
        var required = one.Requirements.Select(judged => judged.Requirement.Endure).Distinct().Order().ToImmutableArray();
        var low = required.Select(time => time.Minutes).Append(columns[0].From).Min();
        var high = required.Select(time => time.Minutes).Append(columns[^1].To).Max();
        return new PlotDescription
        {
            Title = $"Spread of minutes: {VisibleText.Shortened(one.Name, 40)}",
            Subject = VisibleText.Shortened(result.Scenario.Title, 40),
            Panels =
            [
                new PlotPanel
                {
                    X = AxisScale.Round("endurance", "min", low, high),
                    Y = AxisScale.Round("share of the samples", "%", 0, columns.Max(column => column.Height) * 1.25),
                    Columns = columns,
                    Lines = [.. required.Select(time => new ReferenceLine(ReferenceLineKind.Requirement, time.Minutes, $"required {CellText.RoundMinutes(time)} min"))],
                    Markers = [.. Marks(one, columns)],
                },
            ],
            Notes = [.. Notes(result, one, minutes.Length)],
        };
    }

    /// <summary>About the square root of the number of samples, of equal width.</summary>
    private static ImmutableArray<PlotColumn> Columns(ImmutableArray<double> minutes, int samples)
    {
        var count = Math.Clamp((int)Math.Sqrt(minutes.Length), FewestColumns, MostColumns);
        var (low, width) = (minutes[0], (minutes[^1] - minutes[0]) / count);
        if (width < 1e-6)
            return [new PlotColumn(low - 0.5, low + 0.5, 100.0 * minutes.Length / samples)];
        var heights = new int[count];
        foreach (var value in minutes)
            heights[Math.Min(count - 1, (int)((value - low) / width))]++;
        return [.. heights.Select((height, i) => new PlotColumn(low + (i * width), low + ((i + 1) * width), 100.0 * height / samples))];
    }

    private static IEnumerable<PlotMarker> Marks(SpreadCase one, ImmutableArray<PlotColumn> columns) =>
        from mark in ((string Name, double Share)[])[("P5", 0.05), ("P50", 0.5), ("P95", 0.95)]
        let quantile = one.Quantile(mark.Share)
        where quantile is not null
        select new PlotMarker(new PlotPoint(quantile.Value.Minutes, HeightAt(columns, quantile.Value)), $"{mark.Name} {CellText.Minutes(quantile.Value)} min", 4);

    private static double HeightAt(ImmutableArray<PlotColumn> columns, Duration time) =>
        columns.Where(column => time.Minutes >= column.From && time.Minutes <= column.To).Select(column => column.Height).DefaultIfEmpty(0).First();

    private static IEnumerable<string> Notes(SpreadResult result, SpreadCase one, int lost)
    {
        var samples = one.Seconds.Length;
        yield return $"{RoundedNumber.Short(samples, 0)} samples, seed {RoundedNumber.Short(result.Options.Seed, 0)}.";
        foreach (var judged in one.Requirements)
            yield return $"{SummaryTable.Subject(judged.Requirement)} {CellText.RoundMinutes(judged.Requirement.Endure)} min: met by {RoundedNumber.Short(judged.Share * 100, 2)} %, 95 % interval {RoundedNumber.Fixed(judged.Interval.Low * 100, 2)} to {RoundedNumber.Fixed(judged.Interval.High * 100, 2)} %.";
        if (lost < samples)
            yield return $"{RoundedNumber.Short(100.0 * (samples - lost) / samples, 2)} % of the samples last longer than {CellText.RoundMinutes(result.Scenario.Horizon)} min and are not drawn.";
    }
}
