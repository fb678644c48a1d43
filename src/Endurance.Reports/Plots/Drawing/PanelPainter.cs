using System.Collections.Immutable;
using ScottPlot;
using ScottPlot.TickGenerators;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws curves, grid, axes and marks of one panel.</summary>
internal static class PanelPainter
{
    private const int MarkersOnCurve = 6;
    private const float TickLength = 5;

    public static void Draw(SKCanvas canvas, PanelFrame frame, IReadOnlyList<PlotEvent> events)
    {
        DrawData(canvas, frame);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = 1 };
        EventMarkPainter.DrawLines(canvas, frame, events);
        canvas.DrawRect(new SKRect(frame.Left, frame.Top, frame.Right, frame.Bottom), ink);
        using var letters = Lettering.Regular(13);
        using var labels = Lettering.Regular(14);
        DrawBottomAxis(canvas, frame, ink, letters, labels);
        if (frame.Panel.Y is { } axis)
            DrawLeftAxis(canvas, frame, axis, ink, letters, labels);
        MarkerLabels.Draw(canvas, frame, letters);
    }

    private static void DrawData(SKCanvas canvas, PanelFrame frame)
    {
        using var plot = new Plot();
        plot.RenderManager.ClearCanvasBeforeEachRender = false;
        plot.FigureBackground.Color = Colors.White;
        plot.Axes.Frameless(false);
        plot.Layout.Fixed(new PixelPadding(0, 0, 0, 0));
        plot.Axes.Bottom.TickGenerator = new NumericManual([.. PanelFrame.Ticks(frame.Panel.X)], [.. PanelFrame.Ticks(frame.Panel.X).Select(_ => "")]);
        var y = frame.Panel.Y;
        var levels = y is null ? [] : PanelFrame.Ticks(y).ToArray();
        plot.Axes.Left.TickGenerator = new NumericManual(levels, [.. levels.Select(_ => "")]);
        plot.Grid.MajorLineColor = new Color(210, 210, 210);
        foreach (var column in frame.Panel.Columns)
            plot.PlottableList.Add(new HistogramColumn(column));
        foreach (var line in frame.Panel.Lines)
            AddReference(plot, frame.Panel, line);
        foreach (var series in frame.Panel.Series)
            AddSeries(plot, series, frame.Panel.X);
        plot.Axes.SetLimits(frame.Panel.X.Low, frame.Panel.X.High, y?.Low ?? 0, y?.High ?? 1);
        // The first drawing counts as a change of the limits, upon which everything would be drawn a second time.
        plot.RenderManager.RenderFinished += (_, _) => plot.RenderManager.EnableRendering = false;
        plot.Render(canvas, frame.Rect);
    }

    private static void AddReference(Plot plot, PlotPanel panel, ReferenceLine line)
    {
        ImmutableArray<PlotPoint> points = PlotStyle.IsLevel(line.Kind)
            ? [new(panel.X.Low, line.Value), new(panel.X.High, line.Value)]
            : [new(line.Value, panel.Y?.Low ?? 0), new(line.Value, panel.Y?.High ?? 1)];
        plot.PlottableList.Add(new Curve(points, SKColors.Black, PlotStyle.WidthOf(line.Kind), PlotStyle.DashesOf(line.Kind)));
    }

    private static void AddSeries(Plot plot, PlotSeries series, PlotAxis x)
    {
        var style = PlotStyle.Number(series.Style);
        // One point beyond the axis leads the curve to the edge.
        ImmutableArray<PlotPoint> shown = [.. series.Points.TakeWhile((_, i) => i == 0 || series.Points[i - 1].X <= x.High)];
        plot.PlottableList.Add(new Curve(shown, style.Ink, PlotStyle.LineWidth, style.Dashes));
        for (var i = 0; i < MarkersOnCurve; i++)
        {
            // Shifted from curve to curve, so that markers of curves that coincide stand side by side.
            var at = x.Low + ((x.High - x.Low) * (i + 0.35 + (0.13 * (series.Style % 5))) / MarkersOnCurve);
            if (at < series.Points[0].X || at > series.Points[^1].X)
                continue;
            var marker = plot.Add.Marker(at, TracePoints.ValueAt(series.Points, at));
            marker.MarkerStyle = style.MarkerOfSize(PlotStyle.MarkerSize);
        }
    }

    private static void DrawBottomAxis(SKCanvas canvas, PanelFrame frame, SKPaint ink, Lettering letters, Lettering labels)
    {
        foreach (var tick in PanelFrame.Ticks(frame.Panel.X))
        {
            var x = frame.X(tick);
            canvas.DrawLine(x, frame.Bottom, x, frame.Bottom + TickLength, ink);
            letters.Draw(canvas, PanelFrame.TickText(frame.Panel.X, tick), x, frame.Bottom + 20, 0.5f);
        }

        if (frame.HasAxisLabel)
            labels.Draw(canvas, $"{frame.Panel.X.Label} ({frame.Panel.X.Unit})", frame.Left + (frame.Width / 2), frame.Bottom + 44, 0.5f);
    }

    private static void DrawLeftAxis(SKCanvas canvas, PanelFrame frame, PlotAxis axis, SKPaint ink, Lettering letters, Lettering labels)
    {
        foreach (var tick in PanelFrame.Ticks(axis))
        {
            var y = frame.Y(tick);
            canvas.DrawLine(frame.Left - TickLength, y, frame.Left, y, ink);
            letters.Draw(canvas, PanelFrame.TickText(axis, tick), frame.Left - 9, y + 4.5f, 1);
        }

        canvas.Save();
        canvas.RotateDegrees(-90, 30, frame.Top + (frame.Height / 2));
        labels.Draw(canvas, $"{axis.Label} ({axis.Unit})", 30, frame.Top + (frame.Height / 2) + 5, 0.5f);
        canvas.Restore();
    }
}
