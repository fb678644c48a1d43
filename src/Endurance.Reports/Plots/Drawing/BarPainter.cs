using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws rows of horizontal bars.</summary>
internal static class BarPainter
{
    private const float BarHeight = 16;
    private const float ArrowLength = 12;

    public static void Draw(SKCanvas canvas, PanelFrame frame)
    {
        using var letters = Lettering.Regular(13);
        using var headings = Lettering.Bold(13);
        foreach (var group in frame.Panel.Groups)
            headings.Draw(canvas, group.Text, frame.Left + 6, frame.RowTop(group.Row) + (frame.RowHeight / 2) + 6, 0, hasHalo: true);
        foreach (var bar in frame.Panel.Bars)
        {
            var top = frame.RowTop(bar.Row) + ((frame.RowHeight - BarHeight) / 2);
            var right = frame.X(bar.Length);
            letters.Draw(canvas, bar.Label, frame.Left - 9, top + 13, 1);
            using (var outline = Outline(frame.Left, top, right, bar.GoesOn))
                Fill(canvas, outline, bar.Kind);
            var end = right + (bar.GoesOn ? ArrowLength : 0);
            if (bar.Required is { } required)
            {
                DrawRequired(canvas, frame.X(required), top);
                // The words stand clear of the tick of a requirement just missed.
                if (frame.X(required) > end - 4 && frame.X(required) < end + 10 + letters.WidthOf(bar.Text))
                    end = frame.X(required) + 4;
            }

            letters.Draw(canvas, bar.Text, end + 6, top + 13, 0, hasHalo: true);
        }
    }

    /// <summary>A sample for the key, or a bar: colour and hatching by kind.</summary>
    public static void Fill(SKCanvas canvas, SKPath outline, BarKind kind)
    {
        using var fill = new SKPaint { Color = ColourOf(kind), IsAntialias = true };
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = 1 };
        canvas.DrawPath(outline, fill);
        if (kind is BarKind.Missed)
            Hatch(canvas, outline);
        canvas.DrawPath(outline, ink);
    }

    public static void DrawRequired(SKCanvas canvas, float x, float top)
    {
        using var edge = new SKPaint { Color = SKColors.White, Style = SKPaintStyle.Stroke, StrokeWidth = 6 };
        using var ink = new SKPaint { Color = SKColors.Black, Style = SKPaintStyle.Stroke, StrokeWidth = 3 };
        canvas.DrawLine(x, top - 3, x, top + BarHeight + 3, edge);
        canvas.DrawLine(x, top - 3, x, top + BarHeight + 3, ink);
    }

    public static SKPath Outline(float left, float top, float right, bool goesOn)
    {
        var outline = new SKPath();
        outline.MoveTo(left, top);
        outline.LineTo(right, top);
        if (goesOn)
            outline.LineTo(right + ArrowLength, top + (BarHeight / 2));
        outline.LineTo(right, top + BarHeight);
        outline.LineTo(left, top + BarHeight);
        outline.Close();
        return outline;
    }

    /// <summary>Okabe and Ito's sky blue and vermillion; grey where nothing is asked.</summary>
    private static SKColor ColourOf(BarKind kind) => kind switch
    {
        BarKind.Met => new SKColor(86, 180, 233),
        BarKind.Missed => new SKColor(213, 94, 0),
        _ => new SKColor(200, 200, 200),
    };

    /// <summary>White strokes at 45 degrees, drawn as lines since pattern fills do not survive in SVG.</summary>
    private static void Hatch(SKCanvas canvas, SKPath outline)
    {
        using var stroke = new SKPaint { Color = SKColors.White, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = 2 };
        var bounds = outline.Bounds;
        canvas.Save();
        canvas.ClipRect(bounds);
        for (var x = bounds.Left - bounds.Height; x < bounds.Right; x += 9)
            canvas.DrawLine(x, bounds.Bottom, x + bounds.Height, bounds.Top, stroke);
        canvas.Restore();
    }
}
