namespace Endurance.Reports.Html;

/// <summary>What every page has around its contents: encoding, policy, style, script.</summary>
internal static class PageFrame
{
    /// <summary>The same contents give the same text, which ends with a line feed.</summary>
    public static string Write(PageHead head, Action<HtmlWriter> contents)
    {
        var html = new HtmlWriter();
        html.Markup("<!DOCTYPE html>\n").Open("html", ("lang", "en")).Open("head");
        html.Markup("<meta charset=\"utf-8\">\n");
        html.Open("meta", ("http-equiv", "Content-Security-Policy"), ("content", Policy(head)));
        html.Markup("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Element("title", head.Title).Open("style").Markup(PageStyle.Css).Close("style").Close("head");
        html.Open("body", ("class", head.Kind));
        contents(html);
        foreach (var script in head.Scripts)
            html.Open("script").Markup(script).Close("script");
        return html.Close("body").Close("html").ToString();
    }

    /// <summary>Forbids the page every request but those it needs; only its own style and script run.</summary>
    private static string Policy(PageHead head) =>
        "default-src 'none'; style-src 'unsafe-inline'; "
        + (head.Scripts.IsEmpty ? "" : "script-src 'unsafe-inline'; ")
        + (head.AsksItsServer ? "connect-src 'self'; " : "")
        + "base-uri 'none'; form-action 'none'";
}
