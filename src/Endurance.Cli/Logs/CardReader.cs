using System.Collections.Immutable;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;
using Endurance.Yaml;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Cli.Logs;

/// <summary>Reads a filled card of a ground test: rows in any order, separated by commas, semicolons or tabs; lines that begin with # are comments.</summary>
internal static class CardReader
{
    private const int LargestMebibytes = 8;

    /// <param name="path">As the user named it.</param>
    /// <param name="plan">What the card is read against.</param>
    /// <returns>The readings, empty when there are errors, and everything wrong with the file.</returns>
    public static (ImmutableArray<MeasuredReading> Measured, ImmutableArray<Diagnostic> Diagnostics) Read(string path, GroundTestPlan plan)
    {
        var diagnostics = new DiagnosticList(path);
        var text = FileText.Read(path, diagnostics, "a filled card, a text file with comma-separated values", LargestMebibytes);
        return text is null ? ([], diagnostics.InOrder()) : Parse(path, text, plan, diagnostics);
    }

    private static (ImmutableArray<MeasuredReading>, ImmutableArray<Diagnostic>) Parse(string path, string text, GroundTestPlan plan, DiagnosticList diagnostics)
    {
        var source = new SourceText(path, text.TrimStart('\uFEFF'));
        diagnostics.Source = source;
        var rows = CellSeparator.Of(source, diagnostics, "the card", "point,title,quantity,unit,predicted,tolerance,measured,remarks") is { } separator
            ? ReadRows(source, separator, plan, diagnostics)
            : null;
        rows?.Finish();
        if (!diagnostics.HasErrors && rows is not { Measured.IsEmpty: false })
            diagnostics.Error("nothing-measured", SourceSpan.Nowhere, "no reading is filled in", "numbers in the column `measured`");
        return (diagnostics.HasErrors ? [] : rows!.Measured, diagnostics.InOrder());
    }

    private static CardRows? ReadRows(SourceText source, char separator, GroundTestPlan plan, DiagnosticList diagnostics)
    {
        CardColumns? columns = null;
        CardRows? rows = null;
        foreach (var (line, cells) in CellRows.Of(source, separator, "quotation marks in pairs, and no line break in a cell", diagnostics))
        {
            string[] record = [.. cells.Select(Unguarded)];
            if (rows is null)
            {
                columns = CardColumns.Read(record, line, diagnostics);
                if (columns is null)
                    return null;
                rows = new CardRows(plan, columns, diagnostics);
            }
            else if (HasWidth(record, columns!.Width, line, diagnostics))
            {
                rows.Read(record, line);
            }
        }

        return rows;
    }

    /// <summary>Whether the row has a heading for every cell. Spreadsheets leave out empty cells at its end.</summary>
    private static bool HasWidth(string[] record, int width, LogLine line, DiagnosticList diagnostics)
    {
        if (record.Length <= width)
            return true;
        var hint = line.Separator == ',' ? "; a decimal comma needs quotation marks around its number, or semicolons between the cells" : "";
        diagnostics.Error("cell-count", line.Cell(width), $"this line has {record.Length} cells", $"{width}, as there are headings{hint}");
        return false;
    }

    /// <summary>Without the apostrophe that keeps a spreadsheet from taking text for a formula.</summary>
    private static string Unguarded(string cell) => cell.StartsWith('\'') ? cell[1..].Trim() : cell.Trim();
}
