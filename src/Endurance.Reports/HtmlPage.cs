using System.Net;
using System.Text;

namespace Endurance.Reports;

/// <summary>A report as one page of HTML for screen and paper: its own style, no script, nothing from a network.</summary>
public static class HtmlPage
{
    private const string Style = """
        @page { margin: 14mm; }
        body { font: 10.5pt/1.35 system-ui, "Segoe UI", Arial, sans-serif; color: #111; background: #fff; max-width: 180mm; margin: 0 auto; padding: 1em; }
        h1 { font-size: 17pt; margin: 0 0 .4em; }
        h2 { font-size: 13pt; margin: 1.2em 0 .3em; border-bottom: 1pt solid #444; break-after: avoid; }
        h3 { font-size: 11pt; margin: 1em 0 .2em; break-after: avoid; }
        p, ul { margin: .2em 0 .4em; }
        ul { padding-left: 1.4em; }
        .piece { break-inside: avoid; overflow-x: auto; }
        h3, .piece { overflow-wrap: anywhere; }
        table { border-collapse: collapse; width: 100%; margin: .3em 0 .5em; }
        th, td { border: .6pt solid #555; padding: .25em .45em; text-align: left; vertical-align: top; height: 1.4em; }
        th { background: #eee; font-weight: 600; }
        .number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
        .write { min-width: 18mm; }
        pre { white-space: pre-wrap; }
        @media print { body { padding: 0; max-width: none; } th { print-color-adjust: exact; } }
        """;

    /// <summary>Ends with a line feed; every text is escaped.</summary>
    public static string Write(ReportDocument document)
    {
        var title = Escape(document.Title);
        var text = new StringBuilder()
            .Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n<title>")
            .Append(title).Append("</title>\n<style>\n").Append(Style).Append("\n</style>\n</head>\n<body>\n<h1>").Append(title).Append("</h1>\n");
        foreach (var block in document.Blocks)
            Append(text, block);
        return text.Append("</body>\n</html>\n").ToString();
    }

    private static void Append(StringBuilder text, ReportBlock block)
    {
        switch (block)
        {
            case ReportHeading heading:
                text.Append("<h2>").Append(Escape(heading.Text)).Append("</h2>\n");
                break;
            case ReportParagraph paragraph:
                text.Append("<p class=\"piece\">").Append(Escape(paragraph.Text)).Append("</p>\n");
                break;
            case ReportList list:
                AppendTitle(text, list.Title);
                text.Append("<ul class=\"piece\">\n");
                foreach (var item in list.Items)
                    text.Append("<li>").Append(Escape(item)).Append("</li>\n");
                text.Append("</ul>\n");
                break;
            case ReportCode code:
                AppendTitle(text, code.Title);
                text.Append("<pre>").Append(Escape(code.Text, isCode: true)).Append("</pre>\n");
                break;
            case ReportTable table:
                AppendTable(text, table);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "Unknown kind of block.");
        }
    }

    private static void AppendTable(StringBuilder text, ReportTable table)
    {
        AppendTitle(text, table.Title);
        text.Append("<div class=\"piece\"><table>\n<thead><tr>");
        foreach (var column in table.Columns)
            text.Append("<th scope=\"col\"").Append(column.IsNumber ? " class=\"number\">" : ">").Append(Escape(column.Label)).Append("</th>");
        text.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            text.Append("<tr>");
            foreach (var (i, cell) in row.Index())
                text.Append(Cell(table.Columns[i], cell)).Append(Escape(cell.Text)).Append("</td>");
            text.Append("</tr>\n");
        }

        text.Append("</tbody>\n</table></div>\n");
    }

    /// <summary>An empty cell is one to write in.</summary>
    private static string Cell(ReportColumn column, ReportCell cell)
    {
        if (cell.Text.Length == 0)
            return "<td class=\"write\">";
        return column.IsNumber ? "<td class=\"number\">" : "<td>";
    }

    private static void AppendTitle(StringBuilder text, string title)
    {
        if (title.Length > 0)
            text.Append("<h3>").Append(Escape(title)).Append("</h3>\n");
    }

    private static string Escape(string text, bool isCode = false) => WebUtility.HtmlEncode(isCode ? text : VisibleText.Of(text));
}
