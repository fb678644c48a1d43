using System.Globalization;
using System.Text;
using Endurance.Findings;
using Endurance.Yaml.Diagnostics;

namespace Endurance.Yaml;

/// <summary>Turns diagnostics into plain text for a terminal; safe whatever the file held.</summary>
public static class DiagnosticRenderer
{
    private const int WidestLine = 160;
    private const int ShownBefore = 60;
    private const int WidestMark = 60;

    /// <summary>Each diagnostic with its line and what was expected, a blank line between them; lines end with a line feed.</summary>
    public static string Render(IEnumerable<Diagnostic> diagnostics) => string.Join('\n', diagnostics.Select(Render));

    /// <summary>One diagnostic, ending with a line feed.</summary>
    public static string Render(Diagnostic diagnostic)
    {
        var text = new StringBuilder();
        text.Append(Quoted.Printable(diagnostic.File));
        if (diagnostic.Line > 0)
            text.Append(CultureInfo.InvariantCulture, $":{diagnostic.Line}:{diagnostic.Column}");
        text.Append(CultureInfo.InvariantCulture, $": {Word(diagnostic.Severity)}[{diagnostic.Code}]: {Layout(diagnostic)}{Quoted.Printable(diagnostic.Message)}\n");
        if (diagnostic.SourceLine.Length > 0)
            AppendSource(text, diagnostic);
        if (diagnostic.Expected is { } expected)
            text.Append(CultureInfo.InvariantCulture, $"  expected: {Quoted.Printable(expected)}\n");
        if (diagnostic.Nearest is { } nearest)
            text.Append(CultureInfo.InvariantCulture, $"  did you mean `{Quoted.Printable(nearest)}`?\n");
        return text.ToString();
    }

    private static string Layout(Diagnostic diagnostic) => diagnostic.Layout is { } layout ? $"in the layout {Quoted.Of(layout)}: " : "";

    private static string Word(Severity severity) => severity == Severity.Error ? "error" : "warning";

    private static void AppendSource(StringBuilder text, Diagnostic diagnostic)
    {
        var line = diagnostic.SourceLine;
        var start = Math.Clamp(diagnostic.Column - 1, 0, line.Length);
        var end = Math.Clamp(start + diagnostic.Length, start, line.Length);
        var (from, to) = Window(line.Length, start);
        var margin = string.Create(CultureInfo.InvariantCulture, $"  {diagnostic.Line} | ");
        var before = (from > 0 ? "…" : "") + Printable(line[from..start]);
        var marked = Printable(line[start..Math.Clamp(end, start, to)]);
        var after = Printable(line[Math.Clamp(end, start, to)..to]) + (to < line.Length ? "…" : "");
        text.Append(margin).Append(before).Append(marked).Append(after).Append('\n');
        text.Append(' ', margin.Length - 2).Append("| ").Append(' ', before.Length).Append('^', Math.Clamp(marked.Length, 1, WidestMark)).Append('\n');
    }

    private static (int From, int To) Window(int length, int start)
    {
        if (length <= WidestLine)
            return (0, length);
        var from = Math.Max(0, start - ShownBefore);
        return (from, Math.Min(length, from + WidestLine));
    }

    private static string Printable(string text)
    {
        var printable = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            // Beyond the basic plane one column stands for two characters, which keeps the carets below in step.
            if (rune.IsBmp)
                printable.Append(Quoted.Printable((char)rune.Value, keepsSurrogates: false));
            else
                printable.Append(rune.ToString());
        }

        return printable.ToString();
    }
}
