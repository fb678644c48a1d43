using System.Text;

namespace Endurance.Reports;

/// <summary>Text that shows in Markdown as it was typed.</summary>
internal static class MarkdownText
{
    /// <summary>Escapes HTML and every character that could start formatting; an underscore inside a word is left, since it starts none.</summary>
    /// <remarks>Backslash escapes: CommonMark 0.31, section 2.4; underscores: section 6.2, rule 2; the pipe: GFM 0.29, section 4.10.</remarks>
    public static string Escape(string text)
    {
        var visible = VisibleText.Of(text);
        var escaped = new StringBuilder(visible.Length + 8);
        for (var i = 0; i < visible.Length; i++)
        {
            var c = visible[i];
            if (c is '<')
                escaped.Append("&lt;");
            else if (c is '>')
                escaped.Append("&gt;");
            else if (c is '&')
                escaped.Append("&amp;");
            else if (c is '\\' or '`' or '*' or '[' or ']' or '|' or '~' or '#' or '$' || (c is '_' && !IsInsideWord(visible, i)))
                escaped.Append('\\').Append(c);
            else
                escaped.Append(c);
        }

        return escaped.ToString();
    }

    private static bool IsInsideWord(string text, int i) =>
        i > 0 && i < text.Length - 1 && char.IsLetterOrDigit(text[i - 1]) && char.IsLetterOrDigit(text[i + 1]);
}
