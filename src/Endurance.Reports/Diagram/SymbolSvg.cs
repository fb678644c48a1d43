using Endurance.Reports.Html;

namespace Endurance.Reports.Diagram;

/// <summary>Symbols on an upright line, drawn plainly after the basics of IEC 60617 and IEEE 315.</summary>
internal static class SymbolSvg
{
    private const string Ink = "#1b1f24", Paper = "#fff";

    /// <param name="html">Written to.</param>
    /// <param name="part">What to draw.</param>
    /// <param name="x">Of the line.</param>
    /// <param name="y">Middle of the symbol.</param>
    /// <param name="goesUp">Whether the current goes upwards.</param>
    public static void Write(HtmlWriter html, DiagramPart part, double x, double y, bool goesUp)
    {
        switch (part.Symbol)
        {
            case DiagramSymbol.Diode:
                var tip = goesUp ? -1 : 1;
                Path(html, $"M{N(x - 9)} {N(y - (7 * tip))}H{N(x + 9)}L{N(x)} {N(y + (7 * tip))}Z", Ink);
                Path(html, $"M{N(x - 9)} {N(y + (8 * tip))}H{N(x + 9)}", "none", "2.4");
                break;
            case DiagramSymbol.Fuse:
                Path(html, $"M{N(x - 5)} {N(y - 12)}h10v24h-10z", Paper);
                Path(html, $"M{N(x)} {N(y - 12)}V{N(y + 12)}", "none");
                break;
            case DiagramSymbol.FusibleLink:
                Path(html, $"M{N(x)} {N(y - 12)}q-8 6 0 12q8 6 0 12", "none", "3");
                break;
            case DiagramSymbol.Resistor:
                Path(html, $"M{N(x - 5)} {N(y - 12)}h10v24h-10z", Paper);
                break;
            case DiagramSymbol.Charger:
                Path(html, $"M{N(x - 12)} {N(y - 14)}h24v28h-24z", Paper);
                Path(html, goesUp ? $"M{N(x)} {N(y + 9)}V{N(y - 8)}m-5 6l5 -6l5 6" : $"M{N(x)} {N(y - 9)}V{N(y + 8)}m-5 -6l5 6l5 -6", "none");
                break;
            case DiagramSymbol.Battery:
                Erase(html, x, y, 9);
                Path(html, $"M{N(x - 13)} {N(y - 9)}H{N(x + 13)}M{N(x - 13)} {N(y + 3)}H{N(x + 13)}M{N(x)} {N(y - 3)}V{N(y + 3)}", "none");
                Path(html, $"M{N(x - 7)} {N(y - 3)}H{N(x + 7)}M{N(x - 7)} {N(y + 9)}H{N(x + 7)}", "none", "3.4");
                break;
            case DiagramSymbol.Alternator:
                html.Shape("circle", ("cx", N(x)), ("cy", N(y)), ("r", "13"), ("fill", Paper), ("stroke", Ink), ("stroke-width", "1.6"));
                html.Element("text", "G", ("x", N(x)), ("y", N(y + 4.5)), ("text-anchor", "middle"), ("class", "symbol"));
                break;
            default:
                Contact(html, part, x, y);
                break;
        }
    }

    /// <summary>Two terminals and a blade; a coil beside that of a contactor, a cross on that of a breaker.</summary>
    private static void Contact(HtmlWriter html, DiagramPart part, double x, double y)
    {
        Erase(html, x, y, 11);
        var blade = part.IsClosed ? x : x - 11;
        Path(html, $"M{N(x)} {N(y + 11)}L{N(blade)} {N(part.IsClosed ? y - 11 : y - 9)}", "none");
        foreach (var end in (double[])[y - 11, y + 11])
            html.Shape("circle", ("cx", N(x)), ("cy", N(end)), ("r", "2.6"), ("fill", Paper), ("stroke", Ink), ("stroke-width", "1.4"));
        if (part.Symbol is DiagramSymbol.Breaker)
            Path(html, $"M{N(x - 4)} {N(y - 15)}l8 8m0 -8l-8 8", "none");
        if (part.Symbol is DiagramSymbol.Contactor)
            Path(html, $"M{N(x - 20)} {N(y - 4)}h8v10h-8zM{N(x - 12)} {N(y + 1)}h{N(part.IsClosed ? 12 : 7)}", "none", "1.2");
    }

    private static void Erase(HtmlWriter html, double x, double y, double half) =>
        html.Shape("line", ("x1", N(x)), ("x2", N(x)), ("y1", N(y - half)), ("y2", N(y + half)), ("stroke", Paper), ("stroke-width", "4"));

    private static void Path(HtmlWriter html, string d, string fill, string width = "1.6") =>
        html.Shape("path", ("d", d), ("fill", fill), ("stroke", Ink), ("stroke-width", width));

    private static string N(double value) => RoundedNumber.Short(value, 1);
}
