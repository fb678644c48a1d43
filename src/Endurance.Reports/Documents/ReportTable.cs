using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>A titled table; terminal and Markdown show the same one.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="Columns">At least one.</param>
/// <param name="Rows">Each as long as <paramref name="Columns"/>.</param>
public sealed record ReportTable(string Title, ImmutableArray<ReportColumn> Columns, ImmutableArray<ImmutableArray<ReportCell>> Rows) : ReportBlock;
