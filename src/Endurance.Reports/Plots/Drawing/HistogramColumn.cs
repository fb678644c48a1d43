using ScottPlot;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>An upright bar on the axes of a plot.</summary>
internal sealed class HistogramColumn(PlotColumn column) : IPlottable
{
    /// <summary>Okabe and Ito's sky blue.</summary>
    private static readonly SKColor Colour = new(86, 180, 233);

    public bool IsVisible { get; set; } = true;

    public IAxes Axes { get; set; } = new Axes();

    public IEnumerable<LegendItem> LegendItems => [];

    public AxisLimits GetAxisLimits() => AxisLimits.NoLimits;

    public void Render(RenderPack rp)
    {
        var (top, foot) = (Axes.GetPixel(new Coordinates(column.From, column.Height)), Axes.GetPixel(new Coordinates(column.To, 0)));
        var bounds = new SKRect(top.X, top.Y, foot.X, foot.Y);
        using var fill = new SKPaint { Color = Colour, IsAntialias = true };
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = 1 };
        rp.Canvas.DrawRect(bounds, fill);
        rp.Canvas.DrawRect(bounds, ink);
    }
}
