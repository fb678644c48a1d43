using Spectre.Console;

namespace Endurance.Reports;

/// <summary>A report for a terminal, or plain text where the console given has neither colour nor cursor.</summary>
public static class TerminalReport
{
    private static readonly Style Strong = new(decoration: Decoration.Bold);
    private static readonly Style Good = new(Color.Green, decoration: Decoration.Bold);
    private static readonly Style Bad = new(Color.Red, decoration: Decoration.Bold);

    /// <summary>Colour, width and character set are the console's; what was typed by a person is never read as markup.</summary>
    public static void Write(IAnsiConsole console, ReportDocument document)
    {
        WriteLine(console, document.Title, Strong);
        var endsBlank = false;
        foreach (var block in document.Blocks)
        {
            if (!endsBlank)
                console.WriteLine();
            Write(console, block);
            // A table ends in a blank line of its own.
            endsBlank = block is ReportTable;
        }
    }

    private static void Write(IAnsiConsole console, ReportBlock block)
    {
        switch (block)
        {
            case ReportHeading heading:
                WriteLine(console, heading.Text, Strong);
                WriteLine(console, new string('=', Math.Clamp(VisibleText.Of(heading.Text).Length, 1, console.Profile.Width)), Style.Plain);
                break;
            case ReportParagraph paragraph:
                WriteLine(console, paragraph.Text, Style.Plain);
                break;
            case ReportList list:
                WriteList(console, list);
                break;
            case ReportCode code:
                WriteLine(console, code.Title, Strong);
                foreach (var line in code.Text.TrimEnd('\n').Split('\n'))
                    WriteLine(console, line, Style.Plain);
                break;
            case ReportTable table:
                WriteLine(console, table.Title, Strong);
                if (TerminalColumns.Widths(table, console.Profile.Width) is { } widths)
                    WriteTable(console, table, widths);
                else
                    WriteStacked(console, table);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "Unknown kind of block.");
        }
    }

    private static void WriteList(IAnsiConsole console, ReportList list)
    {
        if (list.Title.Length > 0)
            WriteLine(console, list.Title, Strong);
        var grid = new Grid().AddColumn(new GridColumn().NoWrap().PadLeft(0).PadRight(1)).AddColumn(new GridColumn().Padding(0, 0));
        foreach (var item in list.Items)
            grid.AddRow(new Text("-"), new Text(VisibleText.Of(item)));
        console.Write(grid);
    }

    private static void WriteTable(IAnsiConsole console, ReportTable table, int[] widths)
    {
        var drawn = new Table { Border = TableBorder.Simple, ShowRowSeparators = false };
        for (var i = 0; i < table.Columns.Length; i++)
        {
            var column = table.Columns[i];
            var shown = new TableColumn(new Text(column.Label, Strong)) { Padding = new Padding(0, 0, 1, 0), Width = widths[i] };
            drawn.AddColumn(column.IsNumber ? shown.RightAligned() : shown.LeftAligned());
        }

        foreach (var row in table.Rows)
            drawn.AddRow(row.Select(cell => new Text(VisibleText.Of(cell.Text), StyleOf(cell.Tone))));
        console.Write(drawn);
    }

    /// <summary>For a terminal too narrow for the table: each row as lines of heading and value.</summary>
    private static void WriteStacked(IAnsiConsole console, ReportTable table)
    {
        foreach (var row in table.Rows)
        {
            console.WriteLine();
            for (var i = 0; i < row.Length; i++)
            {
                var text = i == 0 ? row[i].Text : $"  {table.Columns[i].Label}: {row[i].Text}";
                WriteLine(console, text, i == 0 ? Strong : StyleOf(row[i].Tone));
            }
        }

        console.WriteLine();
    }

    private static Style StyleOf(CellTone tone) => tone switch
    {
        CellTone.Good => Good,
        CellTone.Bad => Bad,
        _ => Style.Plain,
    };

    private static void WriteLine(IAnsiConsole console, string text, Style style)
    {
        console.Write(new Text(VisibleText.Of(text), style));
        console.WriteLine();
    }
}
