using System.Collections.Immutable;

namespace Endurance.Reports.Plots;

/// <summary>One pair of axes and what is drawn on it.</summary>
public sealed record PlotPanel
{
    public required PlotAxis X { get; init; }

    /// <summary><see langword="null"/>: rows of bars.</summary>
    public PlotAxis? Y { get; init; }

    public ImmutableArray<PlotSeries> Series { get; init; } = [];

    public ImmutableArray<ReferenceLine> Lines { get; init; } = [];

    public ImmutableArray<PlotMarker> Markers { get; init; } = [];

    public ImmutableArray<BarGroup> Groups { get; init; } = [];

    public ImmutableArray<PlotBar> Bars { get; init; } = [];

    public ImmutableArray<PlotColumn> Columns { get; init; } = [];

    public ImmutableArray<PlotSpan> Spans { get; init; } = [];

    /// <summary>Of bars, their headings, or spans.</summary>
    internal int RowCount => Groups.Length + Bars.Length + Spans.Length;
}
