namespace Endurance.Reports.Html;

/// <summary>The blocks of a report as HTML, in the order they stand.</summary>
internal static class BlockWriter
{
    /// <param name="html">Written to.</param>
    /// <param name="blocks">In reading order.</param>
    /// <param name="level">Of the headings among the blocks, 2 to 6.</param>
    public static void Write(HtmlWriter html, IEnumerable<ReportBlock> blocks, int level)
    {
        foreach (var block in blocks)
            Write(html, block, level);
    }

    private static void Write(HtmlWriter html, ReportBlock block, int level)
    {
        switch (block)
        {
            case ReportHeading heading:
                html.Element($"h{RoundedNumber.Short(level, 0)}", heading.Text);
                break;
            case ReportParagraph paragraph:
                html.Element("p", paragraph.Text);
                break;
            case ReportList list:
                WriteList(html, list);
                break;
            case ReportCode code:
                html.Open("pre").Lines(code.Text).Close("pre");
                break;
            case ReportTable table:
                WriteTable(html, table);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "Unknown kind of block.");
        }
    }

    private static void WriteList(HtmlWriter html, ReportList list)
    {
        if (list.Title.Length > 0)
            html.Element("p", list.Title, ("class", "lead"));
        html.Open("ul");
        foreach (var item in list.Items)
            html.Element("li", item);
        html.Close("ul");
    }

    /// <summary>A table scrolls inside its own box; one whose rows lean on the row above cannot be sorted.</summary>
    private static void WriteTable(HtmlWriter html, ReportTable table)
    {
        var sorts = table.Rows.Length > 1 && table.Rows.All(row => row[0].Text.Length > 0);
        html.Open("div", ("class", "scroll"), ("role", "region"), ("tabindex", "0"), ("aria-label", table.Title));
        html.Open("table", ("class", sorts ? "sorts" : "fixed")).Element("caption", table.Title).Open("thead").Open("tr");
        foreach (var column in table.Columns)
            html.Element("th", column.Label, ("scope", "col"), ("class", column.IsNumber ? "number" : "words"));
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

    private static void WriteCell(HtmlWriter html, ReportCell cell, bool isNumber, bool isFirst)
    {
        var kind = (isNumber ? "number" : "words") + cell.Tone switch
        {
            CellTone.Good => " good",
            CellTone.Bad => " bad",
            _ => "",
        };
        if (isFirst)
            html.Element("th", cell.Text, ("scope", "row"), ("class", kind));
        else
            html.Element("td", cell.Text, ("class", kind));
    }
}
