using System.Text;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws pictures. The same description gives the same bytes on one machine.</summary>
public static class PlotRenderer
{
    private const int Width = 1200;
    private const int LeastHeight = 700;
    private const float Margin = 24;
    private const float PanelTop = 84;
    private const float PanelRight = 820;
    private const float KeyLeft = 850;
    private const float KeyWidth = Width - KeyLeft - Margin;
    private const float BelowPanels = 64;
    private const float BetweenPanels = 44;

    /// <summary>Large even areas pack best unfiltered; the next level takes half as long again for a tenth of the size.</summary>
    private static readonly SKPngEncoderOptions Compression = new(SKPngEncoderFilterFlags.None, 3);

    /// <summary>PNG, 1200 pixels wide and at least 700 high.</summary>
    public static byte[] Png(PlotDescription plot)
    {
        using var surface = SKSurface.Create(new SKImageInfo(Width, HeightOf(plot), SKColorType.Rgba8888, SKAlphaType.Opaque));
        surface.Canvas.Clear(SKColors.White);
        Draw(surface.Canvas, plot);
        using var pixels = surface.PeekPixels() ?? throw new InvalidOperationException("The picture has no pixels.");
        using var data = pixels.Encode(Compression) ?? throw new InvalidOperationException("The picture could not be encoded.");
        return data.ToArray();
    }

    /// <summary>SVG of the same size, UTF-8; text is drawn as outlines and the title is given to screen readers.</summary>
    public static byte[] Svg(PlotDescription plot)
    {
        var height = HeightOf(plot);
        var bounds = SKRect.Create(Width, height);
        using var stream = new SKDynamicMemoryWStream();
        string text;
        using (var shapes = SKSvgCanvas.Create(bounds, stream))
        using (var sheet = new SvgSheet(shapes, Width, height))
        {
            using var white = new SKPaint { Color = SKColors.White };
            sheet.DrawRect(bounds, white);
            Draw(sheet, plot);
            text = sheet.Text;
        }

        using var svg = stream.DetachAsData();
        return Encoding.UTF8.GetBytes(SvgText.Settled(Encoding.UTF8.GetString(svg.AsSpan()), text, $"{plot.Subject}: {plot.Title}"));
    }

    private static void Draw(SKCanvas canvas, PlotDescription plot)
    {
        using (var letters = Lettering.Bold(20))
            letters.Draw(canvas, VisibleText.Of(plot.Title), Margin, 38);
        using (var letters = Lettering.Regular(13))
            letters.Draw(canvas, VisibleText.Of(plot.Subject), KeyLeft, 38);
        var frames = Frames(plot);
        foreach (var frame in frames)
        {
            PanelPainter.Draw(canvas, frame, plot.Events);
            BarPainter.Draw(canvas, frame);
            SpanPainter.Draw(canvas, frame);
        }

        if (plot.Grid is { } grid)
            GridPainter.Draw(canvas, grid, Margin, PanelRight, PanelTop);

        foreach (var happened in plot.Events)
            EventMarkPainter.DrawNumber(canvas, happened.Number, frames[0].X(happened.Minutes), PanelTop - EventMarkPainter.Radius - 7);
        KeyPainter.Draw(canvas, plot, KeyLeft, KeyWidth, PanelTop);
    }

    private static List<PanelFrame> Frames(PlotDescription plot)
    {
        var count = plot.Panels.Length;
        if (count == 0)
            return [];
        var each = (Math.Max(LeastHeight, HeightForBars(plot)) - PanelTop - BelowPanels - (BetweenPanels * (count - 1))) / count;
        return [.. plot.Panels.Select((panel, i) =>
        {
            var left = panel.Y is null ? 240f : 84f;
            return new PanelFrame(panel, left, PanelTop + (i * (each + BetweenPanels)), PanelRight - left, each, i == count - 1);
        })];
    }

    /// <summary>Grows with the key and with the rows of bars, so that nothing is cut off.</summary>
    private static int HeightOf(PlotDescription plot)
    {
        var key = KeyPainter.Draw(null, plot, KeyLeft, KeyWidth, PanelTop) + 20;
        return (int)Math.Ceiling(Math.Max(LeastHeight, Math.Max(HeightForBars(plot), key)));
    }

    private static float HeightForBars(PlotDescription plot)
    {
        if (plot.Grid is { } grid)
            return PanelTop + GridPainter.HeightOf(grid) + BelowPanels;
        return PanelTop + (plot.Panels.Max(panel => panel.RowCount) * PanelFrame.LeastRowHeight) + 16 + BelowPanels;
    }
}
