using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>Pieces that reports share.</summary>
internal static class StudyBlocks
{
    /// <summary>What every report ends with.</summary>
    public static ImmutableArray<ReportBlock> Closing => [new ReportHeading("Before you rely on this"), new ReportList("", Cautions.All)];

    /// <summary>A list, or nothing when it has no items.</summary>
    public static IEnumerable<ReportBlock> ListUnlessEmpty(string title, ImmutableArray<string> items) =>
        items.IsEmpty ? [] : [new ReportList(title, items)];

    public static ImmutableArray<ReportCell> Row(params ReadOnlySpan<ReportCell> cells) => [.. cells];
}
