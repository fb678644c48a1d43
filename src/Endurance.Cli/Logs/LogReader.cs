using System.Collections.Immutable;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Cli.Logs;

/// <summary>Reads a log of a battery: columns by heading, separated by commas, semicolons or tabs; lines that begin with # are comments.</summary>
internal static class LogReader
{
    private const int LargestMebibytes = 64;
    private const int MostRows = 1_000_000;
    private const int FewestRows = 10;

    public static LogReading Read(string path)
    {
        var diagnostics = new DiagnosticList(path);
        var text = FileText.Read(path, diagnostics, "a log, a text file with comma-separated values", LargestMebibytes);
        return text is null ? new LogReading([], diagnostics.InOrder(), []) : Parse(path, text, diagnostics);
    }

    private static LogReading Parse(string path, string text, DiagnosticList diagnostics)
    {
        var source = new SourceText(path, text.TrimStart('\uFEFF'));
        diagnostics.Source = source;
        var rows = new List<LogRow>();
        if (CellSeparator.Of(source, diagnostics, "the log", "time_s,voltage,current") is { } separator)
            ReadRows(source, separator, rows, diagnostics);
        if (!diagnostics.HasErrors && rows.Count < FewestRows)
            diagnostics.Error("log-too-short", SourceSpan.Nowhere, $"the log holds {rows.Count} rows", $"at least {FewestRows} rows below the headings");
        var (samples, notes) = diagnostics.HasErrors ? ([], []) : LogOrder.Of(rows);
        return new LogReading(samples, diagnostics.InOrder(), notes);
    }

    private static void ReadRows(SourceText source, char separator, List<LogRow> rows, DiagnosticList diagnostics)
    {
        LogCells? cells = null;
        var width = 0;
        foreach (var (line, record) in CellRows.Of(source, separator, "numbers without quotation marks", diagnostics))
        {
            if (cells is null)
            {
                if (LogHeading.Read(record, line, diagnostics) is not { } columns)
                    return;
                width = record.Length;
                cells = new LogCells(columns, diagnostics);
            }
            else if (HasWidth(record, width, line, diagnostics) && cells.Read(record, line) is { } row)
            {
                rows.Add(row);
            }

            if (rows.Count <= MostRows)
                continue;
            diagnostics.Error("log-too-long", line.Whole, $"the log has more than {MostRows} rows", "a log thinned out, or in several files");
            return;
        }
    }

    private static bool HasWidth(string[] record, int width, LogLine line, DiagnosticList diagnostics)
    {
        if (record.Length == width || (record.Length > width && record[width..].All(cell => cell.Length == 0)))
            return true;
        var hint = record.Length > width && line.Separator == ',' ? "; a decimal comma needs another separator, such as a semicolon" : "";
        diagnostics.Error("cell-count", line.Cell(Math.Min(record.Length, width)), $"this line has {record.Length} cells", $"{width}, as there are headings{hint}");
        return false;
    }
}
