using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>A whole report before it is laid out for a medium.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="Blocks">In reading order.</param>
public sealed record ReportDocument(string Title, ImmutableArray<ReportBlock> Blocks);
