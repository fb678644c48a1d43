using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws lines with dashes as filled shapes, since SVG written by Skia drops dashes.</summary>
internal static class DashedStroke
{
    /// <summary>Lengths of dash and gap in pixels, in turn; none: a solid line.</summary>
    public static void Draw(SKCanvas canvas, SKPath path, SKColor colour, float width, float[] dashes)
    {
        using var stroke = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = width, StrokeJoin = SKStrokeJoin.Round, Color = colour, IsAntialias = true };
        if (dashes.Length == 0)
        {
            canvas.DrawPath(path, stroke);
            return;
        }

        using var effect = SKPathEffect.CreateDash(dashes, 0);
        stroke.PathEffect = effect;
        using var shape = stroke.GetFillPath(path);
        using var fill = new SKPaint { Color = colour, IsAntialias = true };
        if (shape is not null)
            canvas.DrawPath(shape, fill);
    }

    public static void DrawLine(SKCanvas canvas, float x0, float y0, float x1, float y1, SKColor colour, float width, float[] dashes)
    {
        using var path = new SKPath();
        path.MoveTo(x0, y0);
        path.LineTo(x1, y1);
        Draw(canvas, path, colour, width, dashes);
    }
}
