using System.Collections.Immutable;

namespace Endurance.Reports.Diagram;

/// <summary>Places in pixels: buses as bars one below the other, each line between them in a column of its own.</summary>
/// <remarks>Nothing can overlap: a bar's words stand in the first column, a line's words beside it within its column, and lines share a column only where one ends at or above the bar at which the other begins.</remarks>
internal sealed record DiagramLayout
{
    public const double PartHeight = 38;
    public const double LineHeight = 16;

    /// <summary>From a bar to the first part below it; holds the name.</summary>
    public const double NameHeight = 30;

    /// <summary>From a line's left column edge to the line.</summary>
    public const double LineInset = 24;

    /// <summary>From a line to its words.</summary>
    public const double LabelOffset = 18;

    private const double Margin = 8, Foot = 26, LeastGap = 44, Head = 26;

    public required ImmutableArray<double> BarY { get; init; }

    /// <summary>Right end of each bar.</summary>
    public required ImmutableArray<double> BarEnd { get; init; }

    /// <summary>X of the line of each branch.</summary>
    public required ImmutableArray<double> LineX { get; init; }

    public required double Width { get; init; }

    public required double Height { get; init; }

    public static DiagramLayout Of(ImmutableArray<DiagramRow> rows, ImmutableArray<DiagramBranch> branches)
    {
        var (column, count) = Columns(branches);
        var names = rows.SelectMany(row => row.Lines.Append(DiagramLabel.Of(row.Name))).Select(DiagramLabel.Width).DefaultIfEmpty(0).Max();
        var left = new double[count + 1];
        left[0] = Margin + (names * 1.1) + 16;
        for (var c = 0; c < count; c++)
            left[c + 1] = left[c] + branches.Where((_, i) => column[i] == c).Max(ColumnWidth);
        ImmutableArray<double> lineX = [.. column.Select(c => left[c] + LineInset)];
        var barY = new double[rows.Length];
        var y = Head;
        for (var r = 0; r < rows.Length; r++)
        {
            barY[r] = y;
            y += Gap(rows[r], r, branches);
        }

        return new DiagramLayout
        {
            BarY = [.. barY],
            BarEnd = [.. rows.Index().Select(row => End(row.Index, left[0], branches, lineX))],
            LineX = lineX,
            Width = left[count] + Margin,
            Height = y,
        };
    }

    private static (int[] Column, int Count) Columns(ImmutableArray<DiagramBranch> branches)
    {
        var column = new int[branches.Length];
        var taken = new List<List<DiagramBranch>>();
        for (var i = 0; i < branches.Length; i++)
        {
            var branch = branches[i];
            var free = taken.FindIndex(others => others.TrueForAll(other => branch.Upper >= other.Lower || branch.Lower <= other.Upper));
            if (free < 0)
            {
                free = taken.Count;
                taken.Add([]);
            }

            taken[free].Add(branch);
            column[i] = free;
        }

        return (column, taken.Count);
    }

    private static double ColumnWidth(DiagramBranch branch) => LineInset + LabelOffset + 14
        + branch.Parts.Select(part => part.Label).Append(DiagramLabel.Of(branch.Name)).Max(DiagramLabel.Width);

    private static double Gap(DiagramRow row, int r, ImmutableArray<DiagramBranch> branches)
    {
        var parts = branches.Where(branch => branch.Upper == r)
            .Select(branch => NameHeight + (branch.Parts.Length * PartHeight) + (branch.To is null ? 24 : 12)).DefaultIfEmpty(0).Max();
        return Math.Max(LeastGap, Math.Max(parts, (row.Lines.Length * LineHeight) + 12) + Foot);
    }

    private static double End(int r, double least, ImmutableArray<DiagramBranch> branches, ImmutableArray<double> lineX) => branches.Index()
        .Where(item => item.Item.From == r || item.Item.To == r)
        .Select(item => lineX[item.Index] + 14)
        .Append(least)
        .Max();
}
