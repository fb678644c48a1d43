using ScottPlot;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws marked points and finds a free place for the word beside each.</summary>
internal static class MarkerLabels
{
    private const float MarkerSize = PlotStyle.MarkerSize + 5;
    private const float LineHeight = 17;
    private const int MostLines = 24;

    public static void Draw(SKCanvas canvas, PanelFrame frame, Lettering letters)
    {
        var points = frame.Panel.Markers.Select(marker => new SKPoint(frame.X(marker.At.X), Math.Clamp(frame.Y(marker.At.Y), frame.Top, frame.Bottom))).ToArray();
        var taken = points.Select(point => SKRect.Create(point.X - (MarkerSize / 2), point.Y - (MarkerSize / 2), MarkerSize, MarkerSize)).ToList();
        var places = new List<SKRect>();
        for (var i = 0; i < points.Length; i++)
        {
            var place = FreePlace(frame, points[i], letters.WidthOf(frame.Panel.Markers[i].Text), taken);
            taken.Add(place);
            places.Add(place);
        }

        for (var i = 0; i < points.Length; i++)
            DrawLeader(canvas, points[i], places[i]);
        for (var i = 0; i < points.Length; i++)
        {
            var marker = frame.Panel.Markers[i];
            using var paint = Paint.NewDisposablePaint();
            ScottPlot.Drawing.DrawMarker(canvas, paint, new Pixel(points[i].X, points[i].Y), PlotStyle.Number(marker.Style).MarkerOfSize(MarkerSize));
            letters.Draw(canvas, marker.Text, places[i].MidX, places[i].Bottom - 4, 0.5f, hasHalo: true);
        }
    }

    /// <summary>Above the point, else below, else further away; the nearest that touches nothing placed before.</summary>
    private static SKRect FreePlace(PanelFrame frame, SKPoint point, float width, List<SKRect> taken)
    {
        var left = Math.Clamp(point.X - (width / 2), frame.Left + 4, frame.Right - width - 4);
        var above = SKRect.Create(left, point.Y - (MarkerSize / 2) - 3 - LineHeight, width, LineHeight);
        var below = SKRect.Create(left, point.Y + (MarkerSize / 2) + 3, width, LineHeight);
        for (var line = 0; line < MostLines; line++)
        {
            foreach (var start in (ReadOnlySpan<SKRect>)[above, below])
            {
                var place = start;
                place.Offset(0, (start.Top < point.Y ? -line : line) * LineHeight);
                if (place.Top > frame.Top && place.Bottom < frame.Bottom && !taken.Any(other => other.IntersectsWith(place)))
                    return place;
            }
        }

        return above;
    }

    private static void DrawLeader(SKCanvas canvas, SKPoint point, SKRect place)
    {
        var end = place.Bottom < point.Y ? place.Bottom : place.Top;
        if (Math.Abs(end - point.Y) > LineHeight)
            DashedStroke.DrawLine(canvas, point.X, point.Y, Math.Clamp(point.X, place.Left, place.Right), end, SKColors.Black, 0.8f, []);
    }
}
