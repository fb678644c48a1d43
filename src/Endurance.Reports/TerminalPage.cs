using Spectre.Console;
using Spectre.Console.Rendering;

namespace Endurance.Reports;

/// <summary>A document laid out for the width of a terminal.</summary>
internal sealed class TerminalPage(ReportDocument document) : IRenderable
{
    private const string Bullet = "- ";

    private static readonly Style Strong = new(decoration: Decoration.Bold);
    private static readonly Style Good = new(Color.Green, decoration: Decoration.Bold);
    private static readonly Style Bad = new(Color.Red, decoration: Decoration.Bold);

    public Measurement Measure(RenderOptions options, int maxWidth) => new(maxWidth, maxWidth);

    public IEnumerable<Segment> Render(RenderOptions options, int maxWidth)
    {
        var page = new List<Segment>();
        Add(page, document.Title, Strong, options, maxWidth);
        var endsBlank = false;
        foreach (var block in document.Blocks)
        {
            if (!endsBlank)
                page.Add(Segment.LineBreak);
            Add(page, block, options, maxWidth);
            // A table ends in a blank line of its own.
            endsBlank = block is ReportTable;
        }

        return page;
    }

    private static void Add(List<Segment> page, ReportBlock block, RenderOptions options, int width)
    {
        switch (block)
        {
            case ReportHeading heading:
                Add(page, heading.Text, Strong, options, width);
                Add(page, new string('=', Math.Clamp(VisibleText.Of(heading.Text).Length, 1, width)), Style.Plain, options, width);
                break;
            case ReportParagraph paragraph:
                Add(page, paragraph.Text, Style.Plain, options, width);
                break;
            case ReportList list:
                AddList(page, list, options, width);
                break;
            case ReportCode code:
                Add(page, code.Title, Strong, options, width);
                foreach (var line in code.Text.TrimEnd('\n').Split('\n'))
                    Add(page, line, Style.Plain, options, width);
                break;
            case ReportTable table:
                Add(page, table.Title, Strong, options, width);
                if (TerminalColumns.Widths(table, width) is { } widths)
                    AddTable(page, table, widths, options);
                else
                    AddStacked(page, table, options, width);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "Unknown kind of block.");
        }
    }

    private static void AddList(List<Segment> page, ReportList list, RenderOptions options, int width)
    {
        if (list.Title.Length > 0)
            Add(page, list.Title, Strong, options, width);
        foreach (var item in list.Items)
        {
            var before = Bullet;
            foreach (var line in TerminalLine.Of(item, Style.Plain, options, width - Bullet.Length))
            {
                page.Add(new Segment(before));
                page.AddRange(line.Segments);
                page.Add(Segment.LineBreak);
                before = new string(' ', Bullet.Length);
            }
        }
    }

    private static void AddTable(List<Segment> page, ReportTable table, int[] widths, RenderOptions options)
    {
        var grid = new TerminalGrid(page, widths, [.. table.Columns.Select(column => column.IsNumber)]);
        page.Add(Segment.LineBreak);
        grid.AddRow(table.Columns.Select((column, i) => TerminalLine.Of(column.Label, Strong, options, widths[i])));
        grid.AddRule(options.Unicode ? '─' : '-');
        foreach (var row in table.Rows)
            grid.AddRow(row.Select((cell, i) => TerminalLine.Of(cell.Text, StyleOf(cell.Tone), options, widths[i])));
        page.Add(Segment.LineBreak);
    }

    /// <summary>For a terminal too narrow for the table: each row as lines of heading and value.</summary>
    private static void AddStacked(List<Segment> page, ReportTable table, RenderOptions options, int width)
    {
        foreach (var row in table.Rows)
        {
            page.Add(Segment.LineBreak);
            for (var i = 0; i < row.Length; i++)
            {
                var text = i == 0 ? row[i].Text : $"  {table.Columns[i].Label}: {row[i].Text}";
                Add(page, text, i == 0 ? Strong : StyleOf(row[i].Tone), options, width);
            }
        }

        page.Add(Segment.LineBreak);
    }

    private static Style StyleOf(CellTone tone) => tone switch
    {
        CellTone.Good => Good,
        CellTone.Bad => Bad,
        _ => Style.Plain,
    };

    private static void Add(List<Segment> page, string text, Style style, RenderOptions options, int width)
    {
        foreach (var line in TerminalLine.Of(text, style, options, width))
        {
            page.AddRange(line.Segments);
            page.Add(Segment.LineBreak);
        }
    }
}
