using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws rows of bars to both sides of a common base.</summary>
internal static class SpanPainter
{
    private const float BarHeight = 16;

    /// <summary>Looks of the two bars; the hatched one tells them apart in print.</summary>
    public const BarKind LowKind = BarKind.Missed;
    public const BarKind HighKind = BarKind.Met;

    public static void Draw(SKCanvas canvas, PanelFrame frame)
    {
        using var letters = Lettering.Regular(13);
        foreach (var span in frame.Panel.Spans)
        {
            var top = frame.RowTop(span.Row) + ((frame.RowHeight - BarHeight) / 2);
            letters.Draw(canvas, span.Label, frame.Left - 9, top + 13, 1);
            var (low, high, middle) = (frame.X(span.Low), frame.X(span.High), frame.X(span.Base));
            if (Math.Sign(low - middle) == Math.Sign(high - middle))
            {
                // Both ends on one side: half the height each, or one would hide the other.
                Bar(canvas, middle, low, top, BarHeight / 2, LowKind);
                Bar(canvas, middle, high, top + (BarHeight / 2), BarHeight / 2, HighKind);
                letters.Draw(canvas, $"{span.LowText} / {span.HighText}", Math.Max(middle, Math.Max(low, high)) + 6, top + 13, 0, hasHalo: true);
                continue;
            }

            Bar(canvas, middle, low, top, BarHeight, LowKind);
            Bar(canvas, middle, high, top, BarHeight, HighKind);
            var (left, right) = low <= high ? (span.LowText, span.HighText) : (span.HighText, span.LowText);
            letters.Draw(canvas, left, Math.Min(middle, Math.Min(low, high)) - 6, top + 13, 1, hasHalo: true);
            letters.Draw(canvas, right, Math.Max(middle, Math.Max(low, high)) + 6, top + 13, 0, hasHalo: true);
        }
    }

    private static void Bar(SKCanvas canvas, float from, float to, float top, float height, BarKind kind)
    {
        using var outline = new SKPath();
        outline.AddRect(new SKRect(Math.Min(from, to), top, Math.Max(from, to), top + height));
        BarPainter.Fill(canvas, outline, kind);
    }
}
