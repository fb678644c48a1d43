using System.Collections.Immutable;

namespace Endurance.Reports.Html;

/// <summary>The blocks of a report as HTML, in the order they stand.</summary>
internal static class BlockWriter
{
    private const int MostRowsKeptTogether = 12;

    /// <summary>Characters: beyond the first a word may be broken anywhere; up to the next two a name, and a quantity with its unit, stay on one line; beyond the last it is a sentence that wants room.</summary>
    private const int LongestWord = 24, LongestName = 28, LongestPhrase = 8, LongestLabel = 40;

    /// <param name="html">Written to.</param>
    /// <param name="blocks">In reading order.</param>
    /// <param name="level">Of the headings among the blocks, 2 to 6.</param>
    public static void Write(HtmlWriter html, ImmutableArray<ReportBlock> blocks, int level)
    {
        // A titled list stands below the headings around it, where there are any.
        var inner = blocks.Any(block => block is ReportHeading) ? level + 1 : level;
        foreach (var block in blocks)
            Write(html, block, level, inner);
    }

    private static void Write(HtmlWriter html, ReportBlock block, int level, int inner)
    {
        switch (block)
        {
            case ReportHeading heading:
                html.Element(Heading(level), heading.Text);
                break;
            case ReportParagraph paragraph:
                html.Element("p", paragraph.Text);
                break;
            case ReportList list:
                WriteTitle(html, list.Title, inner);
                html.Open("ul");
                foreach (var item in list.Items)
                    html.Element("li", item);
                html.Close("ul");
                break;
            case ReportCode code:
                WriteTitle(html, code.Title, inner);
                html.Open("pre").Lines(code.Text).Close("pre");
                break;
            case ReportTable table:
                WriteTable(html, table);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "Unknown kind of block.");
        }
    }

    private static string Heading(int level) => "h" + RoundedNumber.Short(level, 0);

    private static void WriteTitle(HtmlWriter html, string title, int level)
    {
        if (title.Length > 0)
            html.Element(Heading(level), title);
    }

    /// <summary>A table scrolls inside its own box; one whose rows lean on the row above cannot be sorted, a short one is not split over pages.</summary>
    private static void WriteTable(HtmlWriter html, ReportTable table)
    {
        var sorts = table.Rows.Length > 1 && table.Rows.All(row => row[0].Text.Length > 0);
        html.Open("div", [("class", table.Rows.Length > MostRowsKeptTogether ? "scroll" : "scroll short"), .. Region(table)]);
        html.Open("table", ("class", sorts ? "sorts" : "fixed"));
        if (table.Title.Length > 0)
            html.Element("caption", table.Title);
        html.Open("thead").Open("tr");
        foreach (var column in table.Columns)
            html.Open("th", ("scope", "col"), ("class", column.IsNumber ? "number" : "words")).Breakable(column.Label).Close("th");
        html.Close("tr").Close("thead").Open("tbody");
        foreach (var row in table.Rows)
        {
            html.Open("tr");
            for (var i = 0; i < row.Length; i++)
                WriteCell(html, row[i], table.Columns[i].IsNumber, isFirst: i == 0 && row[i].Text.Length > 0);
            html.Close("tr");
        }

        html.Close("tbody").Close("table").Close("div");
    }

    /// <summary>A box that may scroll is reached by the keyboard, and then needs a name.</summary>
    private static (string Name, string Value)[] Region(ReportTable table) =>
        table.Title.Length > 0 ? [("role", "region"), ("tabindex", "0"), ("aria-label", table.Title)] : [("tabindex", "0")];

    private static void WriteCell(HtmlWriter html, ReportCell cell, bool isNumber, bool isFirst)
    {
        var kind = (isNumber ? "number" : "words") + cell.Tone switch
        {
            CellTone.Good => " good",
            CellTone.Bad => " bad",
            _ => "",
        };
        if (HasLongWord(cell.Text))
            kind += " long";
        else if (cell.Text.Length > 0 && cell.Text.Length <= (cell.Text.Contains(' ', StringComparison.Ordinal) ? LongestPhrase : LongestName))
            kind += " name";
        else if (cell.Text.Length > LongestLabel)
            kind += " prose";
        if (isFirst)
            html.Open("th", ("scope", "row"), ("class", kind)).Breakable(cell.Text).Close("th");
        else
            html.Open("td", ("class", kind)).Breakable(cell.Text).Close("td");
    }

    /// <summary>A word that would push a table over the edge of the paper.</summary>
    private static bool HasLongWord(string text) => text.Split(' ', '_', '-').Any(word => word.Length > LongestWord);
}
