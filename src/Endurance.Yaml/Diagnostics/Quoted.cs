using System.Globalization;
using System.Text;

namespace Endurance.Yaml.Diagnostics;

/// <summary>Makes a user's text safe to print: no control or invisible characters, no great length.</summary>
internal static class Quoted
{
    private const int Longest = 40;

    /// <summary>The text between backquotes.</summary>
    public static string Of(string text) => $"`{Shortened(text)}`";

    /// <summary>At most 40 characters, made printable.</summary>
    public static string Shortened(string text)
    {
        var cut = text.Length <= Longest ? text : string.Concat(text.AsSpan(0, Longest - 1), "…");
        return Printable(cut);
    }

    /// <summary>The same text with control and invisible characters spelt out.</summary>
    public static string Printable(string text)
    {
        var printable = new StringBuilder(text.Length);
        foreach (var character in text)
            printable.Append(Printable(character, keepsSurrogates: true));
        return printable.ToString();
    }

    /// <summary>One UTF-16 character as it may be printed.</summary>
    public static string Printable(char character, bool keepsSurrogates) => char.GetUnicodeCategory(character) switch
    {
        UnicodeCategory.Control when character == '\t' => " ",
        UnicodeCategory.Surrogate when keepsSurrogates => character.ToString(),
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
            or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse => string.Create(CultureInfo.InvariantCulture, $"<U+{(int)character:X4}>"),
        _ => character.ToString(),
    };
}
