using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws a table of coloured cells.</summary>
internal static class GridPainter
{
    private const float RowHeight = 26;
    private const float HeadingHeight = 62;
    private const float LabelWidth = 290;
    private const float LineHeight = 16;
    private const int HeadingLines = 3;

    public static float HeightOf(PlotGrid grid) => HeadingHeight + (grid.Rows.Length * RowHeight);

    public static void Draw(SKCanvas canvas, PlotGrid grid, float left, float right, float top)
    {
        using var letters = Lettering.Regular(13);
        var first = left + LabelWidth;
        var width = (right - first) / grid.Columns.Length;
        for (var c = 0; c < grid.Columns.Length; c++)
            Heading(canvas, letters, grid.Columns[c], first + ((c + 0.5f) * width), width - 8, top + HeadingHeight);
        for (var r = 0; r < grid.Rows.Length; r++)
        {
            var y = top + HeadingHeight + (r * RowHeight);
            Label(canvas, letters, grid.Rows[r], first - 9, y + 17.5f);
            for (var c = 0; c < grid.Columns.Length; c++)
                Cell(canvas, letters, grid.Cells[r][c], new SKRect(first + (c * width), y, first + ((c + 1) * width), y + RowHeight));
        }
    }

    /// <summary>A long label takes two smaller lines.</summary>
    private static void Label(SKCanvas canvas, Lettering letters, string text, float right, float baseline)
    {
        if (letters.WidthOf(text) <= LabelWidth - 9)
        {
            letters.Draw(canvas, text, right, baseline, 1);
            return;
        }

        using var small = Lettering.Regular(10.5f);
        var lines = small.Wrap(text, LabelWidth - 9).Take(2).ToList();
        for (var i = 0; i < lines.Count; i++)
            small.Draw(canvas, lines[i], right, baseline - (lines.Count == 1 ? 0 : 6) + (i * 11.5f), 1);
    }

    /// <summary>Breaks at underscores as well as at spaces, since names have no spaces.</summary>
    private static void Heading(SKCanvas canvas, Lettering letters, string text, float middle, float width, float bottom)
    {
        var lines = letters.Wrap(text.Replace("_", "_ ", StringComparison.Ordinal), width).Take(HeadingLines).ToList();
        for (var i = 0; i < lines.Count; i++)
            letters.Draw(canvas, lines[i].Replace("_ ", "_", StringComparison.Ordinal), middle, bottom - 8 - ((lines.Count - 1 - i) * LineHeight), 0.5f);
    }

    private static void Cell(SKCanvas canvas, Lettering letters, PlotCell cell, SKRect bounds)
    {
        using var outline = new SKPath();
        outline.AddRect(bounds);
        BarPainter.Fill(canvas, outline, cell.Kind);
        letters.Draw(canvas, cell.Text, bounds.MidX, bounds.MidY + 4.5f, 0.5f, hasHalo: true);
    }
}
