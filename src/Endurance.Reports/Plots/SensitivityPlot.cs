using System.Collections.Immutable;

namespace Endurance.Reports.Plots;

/// <summary>What each tolerance alone does to one case, largest first.</summary>
public static class SensitivityPlot
{
    /// <summary><see langword="null"/> without sensitivities.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="caseIndex">Of the case, in the order of the scenario.</param>
    public static PlotDescription? Describe(SpreadResult result, int caseIndex)
    {
        var rows = result.Ranked(caseIndex);
        if (rows.IsEmpty)
            return null;
        var horizon = result.Scenario.Horizon;
        var written = result.AsWritten[caseIndex].Endurance;
        var middle = (written ?? horizon).Minutes;
        var spans = rows.Select((row, i) =>
        {
            var kind = result.KindOf(row);
            return new PlotSpan(
                i,
                VisibleText.Shortened(row.IsGroup ? "group " + row.Quantity : row.Quantity, 30),
                middle,
                result.MinutesOf(row.Low, caseIndex),
                result.MinutesOf(row.High, caseIndex),
                QuantityText.WithUnit(kind, row.Low.Value),
                QuantityText.WithUnit(kind, row.High.Value));
        }).ToImmutableArray();
        var (low, high) = (spans.Min(Least), spans.Max(Most));
        // Room at both sides for the words at the ends of the longest bars.
        var room = Math.Max((high - low) * 0.28, 0.5);
        return new PlotDescription
        {
            Title = $"Each tolerance alone: {VisibleText.Shortened(result.Cases[caseIndex].Name, 40)}",
            Subject = VisibleText.Shortened(result.Scenario.Title, 40),
            Panels =
            [
                new PlotPanel
                {
                    X = AxisScale.Round("endurance", "min", Math.Max(0, low - room), high + room),
                    Spans = spans,
                    Lines = [new ReferenceLine(ReferenceLineKind.Present, middle, $"as written: {CellText.MinutesWithin(written, horizon)} min")],
                },
            ],
            Notes =
            [
                "Low and high are the 5 % and 95 % points of each tolerance, everything else as written.",
                .. rows.Any(row => row.Low.Cases[caseIndex].Endurance is null || row.High.Cases[caseIndex].Endurance is null)
                    ? (ImmutableArray<string>)[$"A bar to {CellText.RoundMinutes(horizon)} min means: not lost within the time simulated."]
                    : [],
            ],
        };
    }

    private static double Least(PlotSpan span) => Math.Min(span.Base, Math.Min(span.Low, span.High));

    private static double Most(PlotSpan span) => Math.Max(span.Base, Math.Max(span.Low, span.High));
}
