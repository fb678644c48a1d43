using System.Text;

namespace Endurance.Reports.Html;

/// <summary>Writes HTML and inline SVG; every text and attribute is escaped, so nothing typed in a scenario can become markup.</summary>
internal sealed class HtmlWriter
{
    private readonly StringBuilder html = new();

    /// <summary>A start tag; the caller closes it.</summary>
    public HtmlWriter Open(string tag, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        html.Append('<').Append(tag);
        foreach (var (name, value) in attributes)
            html.Append(' ').Append(name).Append("=\"").Append(Escape(VisibleText.Of(value))).Append('"');
        html.Append('>');
        return this;
    }

    public HtmlWriter Close(string tag)
    {
        html.Append("</").Append(tag).Append(">\n");
        return this;
    }

    /// <summary>An element of SVG without content.</summary>
    public HtmlWriter Shape(string tag, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(tag, attributes);
        html.Insert(html.Length - 1, '/');
        return this;
    }

    /// <summary>Characters that cannot be seen are shown as their code point.</summary>
    public HtmlWriter Text(string text)
    {
        html.Append(Escape(VisibleText.Of(text)));
        return this;
    }

    /// <summary>Text that may also be broken after an underscore, as names are written.</summary>
    public HtmlWriter Breakable(string text)
    {
        html.Append(Escape(VisibleText.Of(text)).Replace("_", "_<wbr>", StringComparison.Ordinal));
        return this;
    }

    /// <summary>A whole element with text in it.</summary>
    public HtmlWriter Element(string tag, string text, params ReadOnlySpan<(string Name, string Value)> attributes) =>
        Open(tag, attributes).Text(text).Close(tag);

    /// <summary>Several lines that keep their line ends.</summary>
    public HtmlWriter Lines(string text)
    {
        foreach (var line in text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
            html.Append(Escape(VisibleText.Of(line))).Append('\n');
        return this;
    }

    /// <summary>Markup, style or script of the program itself; never anything from a scenario.</summary>
    public HtmlWriter Markup(string own)
    {
        html.Append(own);
        return this;
    }

    public override string ToString() => html.ToString();

    /// <summary>The five characters that mean something in HTML, in text and in quoted attributes alike.</summary>
    public static string Escape(string text)
    {
        if (text.AsSpan().IndexOfAny("&<>\"'") < 0)
            return text;
        var escaped = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }
}
