using System.Text;

namespace Endurance.Reports;

/// <summary>A report as Markdown with pipe tables (GitHub Flavored Markdown).</summary>
public static class MarkdownReport
{
    /// <summary>Ends with a line feed; every text is escaped, so it reads as it was typed.</summary>
    public static string Write(ReportDocument document)
    {
        var text = new StringBuilder();
        text.Append("# ").Append(MarkdownText.Escape(document.Title)).Append('\n');
        foreach (var block in document.Blocks)
        {
            text.Append('\n');
            Append(text, block);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, ReportBlock block)
    {
        switch (block)
        {
            case ReportHeading heading:
                text.Append("## ").Append(MarkdownText.Escape(heading.Text)).Append('\n');
                break;
            case ReportParagraph paragraph:
                text.Append(MarkdownText.Escape(paragraph.Text)).Append('\n');
                break;
            case ReportList list:
                AppendTitle(text, list.Title);
                foreach (var item in list.Items)
                    text.Append("- ").Append(MarkdownText.Escape(item)).Append('\n');
                break;
            case ReportCode code:
                AppendTitle(text, code.Title);
                text.Append("```").Append(code.Language).Append('\n').Append(code.Text).Append("```\n");
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
        AppendRow(text, table.Columns.Select(column => MarkdownText.Escape(column.Label)));
        AppendRow(text, table.Columns.Select(column => column.IsNumber ? "---:" : "---"));
        foreach (var row in table.Rows)
            AppendRow(text, row.Select(cell => MarkdownText.Escape(cell.Text)));
    }

    private static void AppendTitle(StringBuilder text, string title)
    {
        if (title.Length > 0)
            text.Append("**").Append(MarkdownText.Escape(title)).Append("**\n\n");
    }

    private static void AppendRow(StringBuilder text, IEnumerable<string> cells) =>
        text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}
