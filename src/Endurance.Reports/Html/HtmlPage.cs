using System.Collections.Immutable;

namespace Endurance.Reports.Html;

/// <summary>A report as one page of HTML to print and write on: no script, nothing from a network.</summary>
public static class HtmlPage
{
    /// <summary>Ends with a line feed; every text is escaped, an empty cell is one to write in.</summary>
    public static string Write(ReportDocument document) => PageFrame.Write(new PageHead(document.Title) { Kind = "form" }, html =>
    {
        html.Element("h1", document.Title);
        for (var i = 0; i < document.Blocks.Length;)
        {
            var piece = Piece(document.Blocks, i);
            var isTitled = piece[0] is ReportList { Title.Length: > 0 };
            if (isTitled)
                html.Open("div", ("class", "piece"));
            BlockWriter.Write(html, piece, isTitled ? 3 : 2);
            if (isTitled)
                html.Close("div");
            i += piece.Length;
        }
    });

    /// <summary>A titled list and what belongs to it, up to the next one or a heading; it is not split over pages.</summary>
    private static ImmutableArray<ReportBlock> Piece(ImmutableArray<ReportBlock> blocks, int start) =>
        [blocks[start], .. blocks.Skip(start + 1).TakeWhile(block => block is not (ReportHeading or ReportList { Title.Length: > 0 }))];
}
