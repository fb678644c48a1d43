using System.Collections.Immutable;
using Endurance.Findings;

namespace Endurance.Reports;

/// <summary>Findings as a table, the heaviest first.</summary>
internal static class FindingBlocks
{
    /// <summary>Nothing where there are none.</summary>
    public static ImmutableArray<ReportBlock> Of(ImmutableArray<Finding> findings)
    {
        if (findings.IsEmpty)
            return [];
        var rows = findings.OrderByDescending(finding => finding.Severity).Select(Row);
        return [new ReportTable("Findings", [new("weight"), new("part"), new("value"), new("what it means")], [.. rows])];
    }

    private static ImmutableArray<ReportCell> Row(Finding finding) =>
    [
        new ReportCell(Wording.Of(finding.Severity), finding.Severity >= Severity.Warning ? CellTone.Bad : CellTone.Plain),
        finding.Part,
        finding.Value.Length > 0 ? finding.Value : CellText.Absent,
        finding.Message,
    ];
}
