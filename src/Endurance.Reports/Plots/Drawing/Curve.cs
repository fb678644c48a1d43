using System.Collections.Immutable;
using ScottPlot;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>A line through points on the axes of a plot, with dashes that SVG keeps.</summary>
internal sealed class Curve(ImmutableArray<PlotPoint> points, SKColor colour, float width, float[] dashes) : IPlottable
{
    public bool IsVisible { get; set; } = true;

    public IAxes Axes { get; set; } = new Axes();

    public IEnumerable<LegendItem> LegendItems => [];

    public AxisLimits GetAxisLimits() => AxisLimits.NoLimits;

    public void Render(RenderPack rp)
    {
        using var path = new SKPath();
        for (var i = 0; i < points.Length; i++)
        {
            var pixel = Axes.GetPixel(new Coordinates(points[i].X, points[i].Y));
            if (i == 0)
                path.MoveTo(pixel.X, pixel.Y);
            else
                path.LineTo(pixel.X, pixel.Y);
        }

        DashedStroke.Draw(rp.Canvas, path, colour, width, dashes);
    }
}
