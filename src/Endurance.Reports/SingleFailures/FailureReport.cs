using System.Collections.Immutable;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;

namespace Endurance.Reports;

/// <summary>Failures of parts for people: the headline, what loses a requirement, what stays hidden, and the matrix of one case.</summary>
public static class FailureReport
{
    /// <summary>More rows of pairs than anybody reads.</summary>
    private const int MostRows = 100;

    /// <param name="standing">What failed and what it did.</param>
    /// <param name="matrixCase">The case whose matrix is shown.</param>
    public static ReportDocument Describe(FailureStanding standing, string matrixCase) => new(
        standing.Scenario.Title,
        [
            FailureHeadline.Of(standing),
            .. StudyBlocks.ListUnlessEmpty("Cases that miss a requirement without any further failure; they are left out above and below",
                standing.FailingAsTheyStand),
            .. LoadRole.Of(standing.Scenario).IsEmpty ? [] : new[] { new ReportParagraph("An essential load counts as an ignition or a display when its name says so.") },
            .. StudyBlocks.ListUnlessEmpty("Not tried", [.. standing.Untried.Select(untried => untried.Why)]),
            .. Losing(standing),
            .. Hidden(standing),
            .. standing.IsOfPairs ? [] : Matrix(standing, matrixCase),
            .. StudyBlocks.Closing,
        ]);

    private static IEnumerable<ReportBlock> Losing(FailureStanding standing)
    {
        var losing = standing.Losing;
        var title = standing.IsOfPairs ? "Pairs that lose a requirement though neither failure alone does" : "Failures that lose a requirement";
        if (losing.IsEmpty)
        {
            yield return new ReportParagraph(title + ": none.");
            yield break;
        }

        yield return new ReportTable(
            title,
            [new("part"), new("how"), new("case"), new("endurance", "min"), new("lost"), new("revealed by")],
            [.. losing.Take(MostRows).Select(row => StudyBlocks.Row(
                row.Part, row.Mode, row.Case, CellText.MinutesWithin(row.Endurance, standing.Scenario.Horizon, row.BreakOff),
                Lost(row), (row.IsHidden ? "nothing; " : "") + row.RevealedBy))]);
        if (losing.Length > MostRows)
            yield return new ReportParagraph($"{losing.Length - MostRows} more rows: --format csv or json has them all.");
    }

    private static string Lost(FailureRow row) =>
        (row.Lost.IsEmpty ? "no essential load" : string.Join(", ", row.Lost)) + (row.BreakOff is { } breakOff ? $"; {breakOff.Words}" : "");

    /// <summary>A hidden failure waits for the second one.</summary>
    private static IEnumerable<ReportBlock> Hidden(FailureStanding standing)
    {
        var hidden = standing.Rows.Where(row => row.IsHidden).GroupBy(FailureStanding.Name, StringComparer.Ordinal).ToImmutableArray();
        if (hidden.IsEmpty || standing.IsOfPairs)
            return [];
        return
        [
            new ReportTable(
                "Hidden failures: nothing shows them in normal operation",
                [new("part"), new("how"), new("what would show it"), new("loses a requirement in")],
                [.. hidden.Select(rows => StudyBlocks.Row(
                    rows.First().Part, rows.First().Mode, rows.First().RevealedBy, Cases(standing, rows)))]),
        ];
    }

    private static string Cases(FailureStanding standing, IEnumerable<FailureRow> rows)
    {
        var cases = rows.Where(row => row.Verdict == Verdict.Fail && !standing.FailingAsTheyStand.Contains(row.Case)).Select(row => row.Case).ToImmutableArray();
        return cases.IsEmpty ? "none" : string.Join(", ", cases);
    }

    private static IEnumerable<ReportBlock> Matrix(FailureStanding standing, string matrixCase)
    {
        var loads = standing.Scenario.EssentialLoads;
        if (loads.IsEmpty)
            return [];
        return
        [
            new ReportTable(
                $"Minutes of each essential load, case {matrixCase}",
                [new("part"), new("how"), .. loads.Select(load => new ReportColumn(load))],
                [.. standing.Rows.Where(row => row.Case == matrixCase).Select(row => (ImmutableArray<ReportCell>)
                    [row.Part, row.Mode, .. loads.Select((_, i) => Cell(standing, row, i))])]),
            new ReportParagraph($"Lasts: not lost within the {CellText.RoundMinutes(standing.Scenario.Horizon)} min simulated. Short: lost before a requirement of the case allows it."),
        ];
    }

    private static ReportCell Cell(FailureStanding standing, FailureRow row, int load)
    {
        var (text, kind) = standing.Cell(row, load);
        return kind switch
        {
            Plots.BarKind.Missed => new ReportCell(text + " short", CellTone.Bad),
            Plots.BarKind.Met when row.Loads[load] is not null => new ReportCell(text + " enough", CellTone.Good),
            _ => row.Loads[load] is null ? text : text + " lost",
        };
    }
}
