using System.Collections.Immutable;

namespace Endurance.Reports.Plots;

/// <summary>A table of coloured cells, each with a word or a number in it.</summary>
/// <param name="Columns">Headings.</param>
/// <param name="Rows">Labels.</param>
/// <param name="Cells">One array a row, as long as <paramref name="Columns"/>.</param>
public sealed record PlotGrid(ImmutableArray<string> Columns, ImmutableArray<string> Rows, ImmutableArray<ImmutableArray<PlotCell>> Cells);
