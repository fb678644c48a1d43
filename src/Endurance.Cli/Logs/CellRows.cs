using CsvHelper;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Cli.Logs;

/// <summary>Parts a text into rows of cells; lines that begin with # are comments.</summary>
internal static class CellRows
{
    /// <summary>Faults after which the rest of a text is not read: more are not shown.</summary>
    private const int MostErrors = 200;

    /// <summary>Every row that holds anything, the headings first; one whose quotation marks do not pair is a diagnostic instead.</summary>
    /// <param name="source">The whole text.</param>
    /// <param name="separator">What parts the cells.</param>
    /// <param name="quotes">What is expected of quotation marks.</param>
    /// <param name="diagnostics">Gets what is wrong.</param>
    public static IEnumerable<(LogLine Line, string[] Cells)> Of(SourceText source, char separator, string quotes, DiagnosticList diagnostics)
    {
        var isMalformed = false;
        using var reader = CsvReader.FromText(source.Text, new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            CommentPrefix = CellSeparator.Comment,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = false,
            OnMalformedRecord = _ => isMalformed = true,
        });
        while (diagnostics.ErrorCount <= MostErrors && reader.Read())
        {
            var number = (int)reader.LineNumber;
            var line = new LogLine(number, source.Line(number), separator);
            var cells = reader.Current.ToArray();
            if (isMalformed)
                diagnostics.Error("quotes", line.Whole, "the quotation marks of this line do not pair", quotes);
            else if (!CellSeparator.IsHint(line.Text) && cells.Any(cell => cell.Length > 0))
                yield return (line, cells);
            isMalformed = false;
        }
    }
}
