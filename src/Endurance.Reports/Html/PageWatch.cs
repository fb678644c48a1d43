namespace Endurance.Reports.Html;

/// <summary>What a page says that is kept fresh while its scenario is being edited.</summary>
/// <param name="Version">The page loads itself again when its server has another one.</param>
/// <param name="Text">One sentence on what the reader sees.</param>
public sealed record PageWatch(string Version, string Text)
{
    /// <summary>What the reader of the file had to say, lines as in a terminal; may be empty.</summary>
    public string Warnings { get; init; } = "";

    /// <summary>The page is not of the newest version of the file.</summary>
    public bool IsOlder { get; init; }

    /// <summary>On top of the page; not printed.</summary>
    internal void Write(HtmlWriter html)
    {
        html.Open("aside", ("id", "watch"), ("class", IsOlder ? "watch older screen" : "watch screen"), ("data-version", Version), ("role", "status"));
        html.Element("p", Text);
        if (IsOlder)
            html.Open("p").Element("a", "What is wrong with the file", ("href", "/")).Close("p");
        html.Open("noscript").Element("p", "Load the page again after a save: without script it cannot do so itself.").Close("noscript");
        if (Warnings.Length > 0)
            html.Open("details").Element("summary", "Warnings about the file").Open("pre").Lines(Warnings).Close("pre").Close("details");
        html.Close("aside");
    }
}
