namespace Endurance.Reports.Html;

/// <summary>Stands in for a report that cannot be shown.</summary>
public static class NoticePage
{
    /// <param name="file">Name of the scenario's file.</param>
    /// <param name="watch">What to say, and how the page stays fresh.</param>
    /// <param name="fault">Lines as in a terminal; may be empty.</param>
    /// <param name="hasGoodPage">An earlier report can still be read.</param>
    public static string Write(string file, PageWatch watch, string fault, bool hasGoodPage) =>
        PageFrame.Write(new PageHead($"{file}: watched") { Scripts = [WatchScript.Text], AsksItsServer = true }, html =>
        {
            html.Element("h1", file);
            watch.Write(html);
            if (fault.Length > 0)
                html.Open("pre", ("class", "fault"), ("tabindex", "0")).Lines(fault).Close("pre");
            if (hasGoodPage)
                html.Open("p").Element("a", "The report of the last good version", ("href", "/last-good")).Close("p");
        });
}
