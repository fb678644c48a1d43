using System.Globalization;
using System.Text;

namespace Endurance.Reports;

/// <summary>Text that a person typed, made safe to show: nothing in it can steer a terminal or reorder the line around it.</summary>
internal static class VisibleText
{
    /// <summary>Line ends and tabs become spaces; control, direction and other invisible characters become their code point, such as <c>U+202E</c>.</summary>
    public static string Of(string text)
    {
        if (IsPrintableAscii(text) || !text.EnumerateRunes().Any(rune => IsInvisible(rune) || rune == Rune.ReplacementChar))
            return text;
        var visible = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value is '\n' or '\r' or '\t')
                visible.Append(' ');
            else if (IsInvisible(rune))
                visible.Append(CultureInfo.InvariantCulture, $"U+{rune.Value:X4}");
            else
                visible.Append(rune.ToString());
        }

        return visible.ToString();
    }

    /// <summary>Letters, digits, signs and blanks of ASCII, each of which takes one column of a terminal.</summary>
    public static bool IsPrintableAscii(string text) => !text.AsSpan().ContainsAnyExceptInRange(' ', '~');

    /// <summary>At most so many characters; a longer text ends in an ellipsis.</summary>
    public static string Shortened(string text, int length)
    {
        var visible = Of(text);
        var elements = new StringInfo(visible);
        return elements.LengthInTextElements <= length ? visible : elements.SubstringByTextElements(0, length - 1) + "…";
    }

    private static bool IsInvisible(Rune rune) => Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
