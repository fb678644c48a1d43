using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>A sweep for people.</summary>
public static class SweepReport
{
    /// <summary>One row a case and value.</summary>
    public static ReportDocument Describe(SweepResult result) => new(
        result.Scenario.Title,
        [
            new ReportTable(
                $"Minutes over {result.Quantity.Path}",
                [new("failure case"), new(result.Quantity.Path, result.Unit), new("endurance", "min"), new("lost first"), new("verdict")],
                [.. result.Scenario.FailureCases.SelectMany((_, c) => result.Points.Select((point, i) => Row(result, point, c, i == 0)))]),
            new ReportParagraph(
                $"Each value stands alone for {result.Quantity.Path}; everything else is as written{AsWritten(result)}. "
                + $"\"More than\" means: not lost within the {CellText.RoundMinutes(result.Scenario.Horizon)} min simulated."),
            .. StudyBlocks.Closing,
        ]);

    private static ImmutableArray<ReportCell> Row(SweepResult result, Studies.Sweeps.SweepPoint point, int c, bool isFirstOfCase) =>
    [
        isFirstOfCase ? point.Cases[c].Name : "",
        result.Number(point),
        CellText.MinutesWithin(point.Cases[c].Endurance, result.Scenario.Horizon, point.Cases[c].BreakOff),
        CellText.LostFirst(point.Cases[c].LimitedBy, point.Cases[c].Endurance, point.Cases[c].BreakOff),
        CellText.Judged(point.Cases[c]),
    ];

    private static string AsWritten(SweepResult result) =>
        $" (there it is {QuantityText.WithUnit(result.Quantity.Kind, result.Quantity.Get(result.Scenario))})";
}
