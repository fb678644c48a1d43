using System.Collections.Immutable;
using Endurance.Findings;

namespace Endurance.Reports.Html;

/// <summary>What every study noticed, the heaviest first.</summary>
internal static class ReviewFindings
{
    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts)
    {
        ImmutableArray<(string Where, Finding Finding)> all =
        [
            .. facts.Cases.SelectMany(result => result.Findings.Select(finding => (result.Name, finding))),
            .. facts.Loads.Findings.Select(finding => ("load analysis", finding)),
            .. facts.Wiring.Rows.SelectMany(row => row.Findings).Select(finding => ("wiring", finding)),
        ];
        if (all.IsEmpty)
            return [new ReportParagraph("Nothing deserves a second look.")];
        return
        [
            new ReportTable(
                "What deserves a second look",
                [new("weight"), new("part"), new("found in"), new("value"), new("what it means")],
                [.. all.GroupBy(item => item.Finding).OrderByDescending(same => same.Key.Severity).Select(Row)]),
        ];
    }

    private static ImmutableArray<ReportCell> Row(IGrouping<Finding, (string Where, Finding Finding)> same) =>
    [
        new ReportCell(Wording.Of(same.Key.Severity), same.Key.Severity >= Severity.Warning ? CellTone.Bad : CellTone.Plain),
        same.Key.Part,
        string.Join(", ", same.Select(item => item.Where).Distinct(StringComparer.Ordinal)),
        same.Key.Value.Length > 0 ? same.Key.Value : CellText.Absent,
        same.Key.Message,
    ];
}
