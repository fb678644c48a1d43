using System.Collections.Immutable;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports;

/// <summary>A sweep for people.</summary>
public static class SweepReport
{
    /// <summary>One row a value, one column a case; a missed requirement is said in the cell.</summary>
    public static ReportDocument Describe(SweepResult result) => new(
        result.Scenario.Title,
        [
            new ReportTable(
                $"Minutes over {result.Quantity.Path}",
                [
                    new(result.Quantity.Path, result.Unit),
                    .. result.Scenario.FailureCases.Select(one => new ReportColumn(one.Name, "min")),
                ],
                [.. result.Points.Select(point => (ImmutableArray<ReportCell>)
                    [result.Number(point), .. point.Cases.Select(one => Cell(result, one))])]),
            new ReportParagraph(
                $"Each value stands alone for {result.Quantity.Path}; everything else is as written{AsWritten(result)}. "
                + $"\"More than\" means: not lost within the {CellText.RoundMinutes(result.Scenario.Horizon)} min simulated. FAIL marks a case that misses a requirement there."),
            .. StudyBlocks.Closing,
        ]);

    private static ReportCell Cell(SweepResult result, CaseResult one)
    {
        var minutes = CellText.MinutesWithin(one.Endurance, result.Scenario.Horizon);
        return one.Verdict switch
        {
            Verdict.Fail => new ReportCell(minutes + " FAIL", CellTone.Bad),
            Verdict.Pass => new ReportCell(minutes, CellTone.Good),
            _ => minutes,
        };
    }

    private static string AsWritten(SweepResult result) =>
        $" (there it is {QuantityText.WithUnit(result.Quantity.Kind, result.Quantity.Get(result.Scenario))})";
}
