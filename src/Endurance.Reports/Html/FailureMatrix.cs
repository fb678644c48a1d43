using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;

namespace Endurance.Reports.Html;

/// <summary>Every part that fails against every failure case.</summary>
internal static class FailureMatrix
{
    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts)
    {
        var cases = facts.SingleFailures.Select(row => row.Case).Distinct(StringComparer.Ordinal).ToArray();
        var failures = facts.SingleFailures.GroupBy(row => (row.Part, row.Mode)).ToArray();
        if (failures.Length == 0)
            return [new ReportParagraph("The scenario has no part that can fail.")];
        var hidden = failures.Count(failure => failure.First().IsHidden);
        return
        [
            new ReportParagraph(
                $"Each part fails in each way from zero on, with nothing else wrong (\"{SingleFailureStudy.OnItsOwn}\") and on top of each failure case. A cell tells the minutes until the first loss, \">\" where nothing is lost in the time simulated, and the verdict of the requirements. "
                + $"{RoundedNumber.Short(hidden, 0)} of {RoundedNumber.Short(failures.Length, 0)} failures show nothing in normal operation: only the test named finds them."),
            .. StudyBlocks.ListUnlessEmpty("Not tried", [.. UntriedFailure.Of(facts.Scenario).Select(untried => untried.Why)]),
            new ReportTable(
                "Minutes to the first loss and verdict",
                [new("part"), new("failure"), .. cases.Select(name => new ReportColumn(name)), new("hidden"), new("shown by")],
                [.. failures.Select(failure => Row(failure.ToArray(), cases, facts.Scenario.Horizon))]),
        ];
    }

    private static ImmutableArray<ReportCell> Row(FailureRow[] rows, string[] cases, Duration horizon) =>
    [
        rows[0].Part,
        rows[0].Mode,
        .. cases.Select(name => Cell(Array.Find(rows, row => string.Equals(row.Case, name, StringComparison.Ordinal)), horizon)),
        rows[0].IsHidden ? "yes" : "no",
        rows[0].RevealedBy.Length > 0 ? rows[0].RevealedBy : CellText.Absent,
    ];

    private static ReportCell Cell(FailureRow? row, Duration horizon)
    {
        if (row is null)
            return CellText.Absent;
        var minutes = !CellText.IsKnown(row.Endurance, row.BreakOff) ? CellText.NotKnown : row.Endurance is { } lost ? CellText.Minutes(lost) : ">\u00A0" + CellText.RoundMinutes(horizon);
        var judged = CellText.Judged(row.Verdict, row.BreakOff);
        return row.Verdict == Verdict.None ? minutes : judged with { Text = $"{minutes} {judged.Text}" };
    }
}
