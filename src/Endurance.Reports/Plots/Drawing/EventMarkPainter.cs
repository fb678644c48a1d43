using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Numbered marks of what happened.</summary>
internal static class EventMarkPainter
{
    public const float Radius = 10;

    public static void DrawLines(SKCanvas canvas, PanelFrame frame, IReadOnlyList<PlotEvent> events)
    {
        foreach (var happened in events)
            DashedStroke.DrawLine(canvas, frame.X(happened.Minutes), frame.Top, frame.X(happened.Minutes), frame.Bottom, new SKColor(70, 70, 70), 1, [1.5f, 3]);
    }

    /// <summary>A number in a circle; the centre is given.</summary>
    public static void DrawNumber(SKCanvas canvas, int number, float x, float y)
    {
        using var fill = new SKPaint { Color = SKColors.White, IsAntialias = true };
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = 1.2f };
        canvas.DrawCircle(x, y, Radius, fill);
        canvas.DrawCircle(x, y, Radius, ink);
        using var letters = Lettering.Bold(11);
        letters.Draw(canvas, RoundedNumber.Short(number, 0), x, y + 4, 0.5f);
    }
}
