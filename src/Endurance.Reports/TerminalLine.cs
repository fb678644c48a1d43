using Spectre.Console;
using Spectre.Console.Rendering;

namespace Endurance.Reports;

/// <summary>One line of text in a terminal.</summary>
/// <param name="Segments">The text and its looks.</param>
/// <param name="Width">Columns of the terminal that it takes; an ideograph takes two.</param>
internal readonly record struct TerminalLine(IReadOnlyList<Segment> Segments, int Width)
{
    /// <summary>Breaks a text between words into lines of at most so many columns, and a longer word anywhere.</summary>
    public static IReadOnlyList<TerminalLine> Of(string text, Style style, RenderOptions options, int width)
    {
        var visible = VisibleText.Of(text);
        // To look up the width of every character takes longer than all the rest, and most texts are of ASCII alone.
        if (VisibleText.IsPrintableAscii(visible) && Broken(visible, width) is { } lines)
            return [.. lines.Select(line => new TerminalLine([new Segment(line, style)], line.Length))];
        IRenderable measured = new Text(visible, style);
        return [.. Segment.SplitLines(measured.Render(options, width)).Select(line => new TerminalLine(line, line.CellCount()))];
    }

    /// <summary>A blank stays at the end of its line where it fits; <see langword="null"/> for a word that is too long or blanks other than one between two words.</summary>
    private static List<string>? Broken(string text, int width)
    {
        if (text.Length <= width)
            return [text];
        if (text[0] is ' ' || text[^1] is ' ' || text.Contains("  ", StringComparison.Ordinal))
            return null;
        var lines = new List<string>();
        var start = 0;
        while (text.Length - start > width)
        {
            var blank = text.LastIndexOf(' ', start + width, width + 1);
            if (blank < 0)
                return null;
            lines.Add(text[start..Math.Min(blank + 1, start + width)]);
            start = blank + 1;
        }

        lines.Add(text[start..]);
        return lines;
    }
}
