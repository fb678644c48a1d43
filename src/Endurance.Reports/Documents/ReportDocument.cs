using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>A whole report before it is laid out for a medium.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="Blocks">In reading order.</param>
public sealed record ReportDocument(string Title, ImmutableArray<ReportBlock> Blocks)
{
    /// <summary>The title and the first table alone.</summary>
    public ReportDocument InBrief => this with { Blocks = [.. Blocks.OfType<ReportTable>().Take(1)] };
}
