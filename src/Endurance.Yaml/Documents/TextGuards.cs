using System.Globalization;
using System.Text;
using Endurance.Yaml.Diagnostics;

namespace Endurance.Yaml.Documents;

/// <summary>Refuses text that no scenario needs, before the YAML scanner sees it.</summary>
internal static class TextGuards
{
    /// <summary>Largest scenario, bytes or characters.</summary>
    public const int LargestSize = 1024 * 1024;

    private const int MostReports = 20;

    /// <returns>Whether the text may be parsed.</returns>
    public static bool Accepts(SourceText source, DiagnosticList diagnostics)
    {
        if (source.Text.Length > LargestSize)
        {
            diagnostics.Error("file-too-large", SourceSpan.Nowhere with { Source = source.Index }, "the scenario is larger than 1 MiB", "a file of at most 1 MiB");
            return false;
        }

        var reports = 0;
        for (var number = 1; number <= source.Lines.Length && reports < MostReports; number++)
        {
            if (Report(source.Line(number), number, source.Index, diagnostics))
                reports++;
        }

        return reports == 0;
    }

    private static bool Report(string line, int number, int source, DiagnosticList diagnostics)
    {
        var content = line.AsSpan().TrimStart(" \t");
        var tab = line.IndexOf('\t', StringComparison.Ordinal);
        if (tab >= 0 && tab < line.Length - content.Length && !content.IsEmpty && content[0] != '#')
        {
            diagnostics.Error("tab-indentation", new SourceSpan(number, tab + 1, 1, source), "a tab is used to indent this line; YAML allows only spaces", "spaces");
            return true;
        }

        var index = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (IsForbidden(rune))
            {
                diagnostics.Error("control-character", new SourceSpan(number, index + 1, 1, source), string.Create(CultureInfo.InvariantCulture, $"an invisible control character, U+{rune.Value:X4}, is in the text"), "printable text");
                return true;
            }

            index += rune.Utf16SequenceLength;
        }

        return false;
    }

    // A lone surrogate enumerates as U+FFFD; the separators U+0085, U+2028 and U+2029 would end a line for the scanner alone.
    private static bool IsForbidden(Rune rune) =>
        rune.Value is 0x2028 or 0x2029 or 0xFFFE or 0xFFFF or 0xFFFD or 0xFEFF || (Rune.IsControl(rune) && rune.Value != '\t');
}
