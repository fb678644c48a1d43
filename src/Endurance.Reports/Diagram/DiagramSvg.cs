using System.Collections.Immutable;
using Endurance.Reports.Html;
using Endurance.Scenarios;

namespace Endurance.Reports.Diagram;

/// <summary>The feeds of a scenario as an inline drawing: buses as bars, what lies between them as lines with symbols.</summary>
internal static class DiagramSvg
{
    private const string Ink = "#1b1f24";

    /// <summary>Pixels beyond which the drawing is too small to read on an upright sheet.</summary>
    private const double WidestUpright = 900;

    /// <summary>Whether it wants a sheet laid on its side.</summary>
    public static bool IsWide(Scenario scenario)
    {
        var rows = DiagramContent.Rows(scenario);
        return DiagramLayout.Of(rows, DiagramContent.Branches(scenario, rows)).Width > WidestUpright;
    }

    public static void Write(HtmlWriter html, Scenario scenario)
    {
        var rows = DiagramContent.Rows(scenario);
        var branches = DiagramContent.Branches(scenario, rows);
        var layout = DiagramLayout.Of(rows, branches);
        html.Open(
            "svg", ("class", "diagram"), ("width", N(layout.Width)), ("height", N(layout.Height)),
            ("viewBox", $"0 0 {N(layout.Width)} {N(layout.Height)}"), ("role", "img"), ("aria-label", "Feed diagram; the tables below it say the same in words"));
        for (var r = 0; r < rows.Length; r++)
            Bar(html, layout, rows[r], r);
        for (var i = 0; i < branches.Length; i++)
            Branch(html, layout, branches[i], layout.LineX[i]);
        html.Close("svg");
    }

    private static void Bar(HtmlWriter html, DiagramLayout layout, DiagramRow row, int r)
    {
        var y = layout.BarY[r];
        html.Shape("line", ("x1", "8"), ("x2", N(layout.BarEnd[r])), ("y1", N(y)), ("y2", N(y)), ("stroke", Ink), ("stroke-width", "5"), ("stroke-linecap", "round"));
        Label(html, row.Name, 8, y - 8, "bus");
        for (var i = 0; i < row.Lines.Length; i++)
            Label(html, row.Lines[i], 12, y + 18 + (i * DiagramLayout.LineHeight), "load");
    }

    private static void Branch(HtmlWriter html, DiagramLayout layout, DiagramBranch branch, double x)
    {
        var top = layout.BarY[branch.Upper];
        var first = top + DiagramLayout.NameHeight;
        var end = branch.To is null ? first + (branch.Parts.Length * DiagramLayout.PartHeight) : layout.BarY[branch.Lower];
        Upright(html, x, top, end, ("stroke", "#fff"), ("stroke-width", "9"), top + 6, end - 6);
        Upright(html, x, top, end, ("stroke", Ink), ("stroke-width", "1.6"), top, end);
        html.Shape("circle", ("cx", N(x)), ("cy", N(top)), ("r", "4.5"), ("fill", Ink));
        if (branch.To is null)
            Ground(html, x, end);
        else
            html.Shape("circle", ("cx", N(x)), ("cy", N(end)), ("r", "4.5"), ("fill", Ink));
        Label(html, branch.Name, x + DiagramLayout.LabelOffset, top + 21, "name");
        ImmutableArray<DiagramPart> downwards = branch.GoesUp ? [.. branch.Parts.Reverse()] : branch.Parts;
        for (var i = 0; i < downwards.Length; i++)
        {
            var y = first + ((i + 0.5) * DiagramLayout.PartHeight);
            SymbolSvg.Write(html, downwards[i], x, y, branch.GoesUp);
            Label(html, downwards[i].Label, x + DiagramLayout.LabelOffset, y + 4, "part");
        }
    }

    private static void Upright(HtmlWriter html, double x, double top, double end, (string, string) stroke, (string, string) width, double from, double to)
    {
        if (to > from && end > top)
            html.Shape("line", ("x1", N(x)), ("x2", N(x)), ("y1", N(from)), ("y2", N(to)), stroke, width);
    }

    private static void Ground(HtmlWriter html, double x, double y) => html.Shape(
        "path", ("d", $"M{N(x)} {N(y)}V{N(y + 6)}M{N(x - 10)} {N(y + 6)}H{N(x + 10)}M{N(x - 6)} {N(y + 10)}H{N(x + 6)}M{N(x - 2)} {N(y + 14)}H{N(x + 2)}"),
        ("stroke", Ink), ("stroke-width", "1.6"));

    /// <summary>Shortened, with the whole text for who points at it.</summary>
    private static void Label(HtmlWriter html, string text, double x, double y, string kind)
    {
        html.Open("text", ("x", N(x)), ("y", N(y)), ("class", kind), ("direction", "ltr"));
        var shown = kind is "bus" or "name" ? DiagramLabel.Of(text) : text;
        html.Text(shown);
        if (!string.Equals(shown, VisibleText.Of(text), StringComparison.Ordinal))
            html.Element("title", text);
        html.Close("text");
    }

    private static string N(double value) => RoundedNumber.Short(value, 1);
}
