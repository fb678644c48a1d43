using System.Collections.Immutable;
using System.Text.Json;
using Endurance.Reports.Plots;

namespace Endurance.Reports.Html;

/// <summary>Curves over an axis as a small inline picture that can be read with a pointer or the arrow keys.</summary>
internal static class CurveFigure
{
    private const double Width = 900, Height = 330, Left = 52, Right = 884, Top = 26, Bottom = 282;

    /// <summary>Along Y; half of the last digit that is read out.</summary>
    private const double Deviation = 0.004;

    private static readonly ImmutableArray<string> Colours = ["#0072b2", "#b34700", "#007a5a", "#8a3b6e", "#000000", "#7a5200", "#2b6a99"];
    private static readonly ImmutableArray<string> Dashes = ["none", "10 5", "3 4", "12 4 2 4", "18 4", "12 3 2 3 2 3"];

    /// <param name="html">Written to.</param>
    /// <param name="plot">The first panel is drawn, which has a Y axis.</param>
    /// <param name="number">Different for each figure of a page.</param>
    public static void Write(HtmlWriter html, PlotDescription plot, int number)
    {
        var panel = plot.Panels[0];
        var id = "clip" + RoundedNumber.Short(number, 0);
        var series = panel.Series.Select(line => line with { Points = CurvePoints.Thinned(line.Points, Deviation) }).ToImmutableArray();
        html.Open("figure", ("class", "reads")).Element("figcaption", plot.Title);
        html.Open("div", ("class", "scroll"), ("tabindex", "-1"));
        html.Open("svg", ("class", "chart"), ("viewBox", $"0 0 {N(Width)} {N(Height)}"), ("role", "img"), ("tabindex", "0"), ("aria-label", plot.Title + "; " + string.Join("; ", series.Select(line => line.Name + Words(panel, line)))));
        html.Open("clipPath", ("id", id)).Shape("rect", ("x", N(Left)), ("y", N(Top)), ("width", N(Right - Left)), ("height", N(Bottom - Top))).Close("clipPath");
        Axes(html, panel);
        Lines(html, panel);
        foreach (var line in series)
            html.Shape("polyline", ("clip-path", $"url(#{id})"), ("fill", "none"), ("stroke", Colour(line.Style)), ("stroke-width", "2.2"), ("stroke-dasharray", Dash(line.Style)), ("points", Path(panel, line.Points)));
        foreach (var marker in panel.Markers)
            html.Shape("circle", ("cx", N(X(panel, marker.At.X))), ("cy", N(Math.Clamp(Y(panel, marker.At.Y), Top, Bottom))), ("r", "4.5"), ("fill", "#fff"), ("stroke", Colour(marker.Style)), ("stroke-width", "2"));
        Marks(html, panel, plot.Events);
        html.Shape("line", ("class", "cursor"), ("visibility", "hidden"), ("x1", "0"), ("x2", "0"), ("y1", N(Top)), ("y2", N(Bottom)), ("stroke", "#1b1f24"), ("stroke-width", "1"));
        html.Close("svg").Close("div");
        html.Element("p", "", ("class", "read"), ("aria-live", "polite"));
        Key(html, panel, series);
        Notes(html, plot);
        html.Open("script", ("type", "application/json")).Markup(Data(panel, series)).Close("script").Close("figure");
    }

    private static void Axes(HtmlWriter html, PlotPanel panel)
    {
        foreach (var (value, text) in AxisTicks.Of(panel.Y!))
        {
            var y = N(Y(panel, value));
            html.Shape("line", ("x1", N(Left)), ("x2", N(Right)), ("y1", y), ("y2", y), ("stroke", "#dde1e6"));
            html.Element("text", text, ("x", N(Left - 7)), ("y", N(Y(panel, value) + 4)), ("text-anchor", "end"));
        }

        foreach (var (value, text) in AxisTicks.Of(panel.X))
        {
            var x = N(X(panel, value));
            html.Shape("line", ("x1", x), ("x2", x), ("y1", N(Bottom)), ("y2", N(Bottom + 5)), ("stroke", "#5a626d"));
            html.Element("text", text, ("x", x), ("y", N(Bottom + 19)), ("text-anchor", "middle"));
        }

        html.Shape("path", ("d", $"M{N(Left)} {N(Top)}V{N(Bottom)}H{N(Right)}"), ("fill", "none"), ("stroke", "#5a626d"));
        html.Element("text", $"{panel.Y!.Label} ({panel.Y.Unit})", ("x", "4"), ("y", "13"));
        html.Element("text", $"{panel.X.Label} ({panel.X.Unit})", ("x", N((Left + Right) / 2)), ("y", N(Height - 8)), ("text-anchor", "middle"));
    }

    private static void Lines(HtmlWriter html, PlotPanel panel)
    {
        foreach (var line in panel.Lines)
        {
            var isLevel = line.Kind is ReferenceLineKind.Cutoff;
            var path = isLevel ? $"M{N(Left)} {N(Y(panel, line.Value))}H{N(Right)}" : $"M{N(X(panel, line.Value))} {N(Top)}V{N(Bottom)}";
            html.Shape("path", ("d", path), ("stroke", "#5a626d"), ("stroke-width", isLevel ? "1.4" : "2.4"), ("stroke-dasharray", isLevel ? "6 4" : "2 3"));
        }
    }

    private static void Marks(HtmlWriter html, PlotPanel panel, ImmutableArray<PlotEvent> events)
    {
        foreach (var mark in events)
        {
            var x = N(X(panel, mark.Minutes));
            html.Shape("path", ("d", $"M{x} {N(Top)}V{N(Bottom)}"), ("stroke", "#8a929c"), ("stroke-dasharray", "1 3"));
            html.Element("text", RoundedNumber.Short(mark.Number, 0), ("x", x), ("y", N(Top + 12)), ("text-anchor", "middle"), ("stroke", "#fff"), ("stroke-width", "4"), ("paint-order", "stroke"));
        }
    }

    private static void Key(HtmlWriter html, PlotPanel panel, ImmutableArray<PlotSeries> series)
    {
        html.Open("ul", ("class", "key"));
        foreach (var line in series)
            Swatch(html, line.Name, Words(panel, line), Colour(line.Style), Dash(line.Style), "2.2");
        foreach (var line in panel.Lines)
            Swatch(html, line.Text, "", "#5a626d", line.Kind is ReferenceLineKind.Cutoff ? "6 4" : "2 3", line.Kind is ReferenceLineKind.Cutoff ? "1.4" : "2.4");
        html.Close("ul");
    }

    /// <summary>The name stands isolated, so that one written from right to left leaves the order of what follows alone.</summary>
    private static void Swatch(HtmlWriter html, string name, string words, string colour, string dash, string width)
    {
        html.Open("li").Open("svg", ("width", "40"), ("height", "10"), ("aria-hidden", "true"));
        html.Shape("line", ("x1", "0"), ("x2", "40"), ("y1", "5"), ("y2", "5"), ("stroke", colour), ("stroke-width", width), ("stroke-dasharray", dash));
        html.Close("svg").Open("bdi").Text(name).Markup("</bdi>").Text(words).Close("li");
    }

    private static void Notes(HtmlWriter html, PlotDescription plot)
    {
        if (!plot.Events.IsEmpty)
        {
            html.Open("ol", ("class", "marks"));
            foreach (var mark in plot.Events)
                html.Element("li", mark.Text);
            html.Close("ol");
        }

        foreach (var note in plot.Notes)
            html.Element("p", note, ("class", "small"));
    }

    /// <summary>Words of its marker, where there is one.</summary>
    private static string Words(PlotPanel panel, PlotSeries line) =>
        panel.Markers.FirstOrDefault(marker => marker.Style == line.Style) is { } marker ? ": " + marker.Text : "";

    private static string Data(PlotPanel panel, ImmutableArray<PlotSeries> series)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteNumber("low", panel.X.Low);
            json.WriteNumber("high", panel.X.High);
            json.WriteNumber("left", Left);
            json.WriteNumber("right", Right);
            json.WriteBoolean("log", panel.X.IsLogarithmic);
            json.WriteNumber("decimals", panel.X.IsLogarithmic ? 1 : 2);
            json.WriteString("xUnit", panel.X.Unit);
            json.WriteString("yUnit", panel.Y!.Unit);
            json.WriteStartArray("series");
            foreach (var line in series)
            {
                json.WriteStartObject();
                json.WriteString("name", VisibleText.Of(line.Name));
                json.WriteStartArray("points");
                foreach (var point in line.Points)
                {
                    json.WriteRawValue(RoundedNumber.Short(point.X, 4));
                    json.WriteRawValue(RoundedNumber.Short(point.Y, 4));
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        // The default encoder writes < > & and quotes as \u escapes, so a name cannot end the script element.
        return System.Text.Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static string Path(PlotPanel panel, ImmutableArray<PlotPoint> points) =>
        string.Join(' ', points.Select(point => $"{N(X(panel, point.X))},{N(Math.Clamp(Y(panel, point.Y), -Height, 2 * Height))}"));

    private static double X(PlotPanel panel, double value) => Left + ((value - panel.X.Low) / (panel.X.High - panel.X.Low) * (Right - Left));

    private static double Y(PlotPanel panel, double value) => Bottom - ((value - panel.Y!.Low) / (panel.Y.High - panel.Y.Low) * (Bottom - Top));

    private static string Colour(int style) => Colours[style % Colours.Length];

    private static string Dash(int style) => Dashes[style % Dashes.Length];

    private static string N(double value) => RoundedNumber.Short(value, 1);
}
