using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Cli.Logs;

/// <summary>What parts the cells of a text.</summary>
internal static class CellSeparator
{
    public const char Comment = '#';

    /// <summary>The one that the line of headings holds most often; a semicolon or a tab rather than a comma where equal.</summary>
    /// <param name="source">The whole text.</param>
    /// <param name="diagnostics">Gets what is wrong.</param>
    /// <param name="what">With its article, for messages.</param>
    /// <param name="headings">An example.</param>
    /// <returns><see langword="null"/> after a diagnostic.</returns>
    public static char? Of(SourceText source, DiagnosticList diagnostics, string what, string headings)
    {
        var number = source.Lines.ToList().FindIndex(line => line.Trim().Length > 0 && !line.StartsWith(Comment) && !IsHint(line)) + 1;
        if (number == 0)
        {
            diagnostics.Error("log-empty", SourceSpan.Nowhere, $"{what} is empty", "a line of headings and rows below it");
            return null;
        }

        var heading = source.Line(number);
        var best = new[] { ';', '\t', ',' }.MaxBy(separator => heading.Count(letter => letter == separator));
        if (heading.Contains(best))
            return best;
        diagnostics.Error("no-separator", new SourceSpan(number, 1, Math.Max(1, heading.Length)), "the line of headings has one column", $"headings separated by commas, semicolons or tabs, such as {headings}");
        return null;
    }

    /// <summary>A line by which one spreadsheet tells another what separates; the headings say the same.</summary>
    public static bool IsHint(string line) => line.Trim('"').StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && line.Trim('"').Length <= "sep=;".Length;
}
