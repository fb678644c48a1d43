using Endurance.Reports.Html;

namespace Endurance.Cli.Watching;

/// <summary>What the watch shows at one moment.</summary>
/// <param name="Version">Of the file that the page tells about.</param>
/// <param name="Page">Shown first.</param>
internal sealed record WatchState(string Version, string Page)
{
    private const string Starting = "starting";

    /// <summary>The last page that could be computed, with a word on top where it is not the newest; <see langword="null"/> while there is none.</summary>
    public string? GoodPage { get; private init; }

    private ReviewFacts? GoodFacts { get; init; }

    /// <summary>Before the first run has ended.</summary>
    public static WatchState Before(string file) =>
        new(Starting, NoticePage.Write(file, new PageWatch(Starting, "The first run is under way."), "", hasGoodPage: false));

    /// <summary>After a run that gave an answer.</summary>
    /// <param name="version">Of the file.</param>
    /// <param name="facts">Found by the run.</param>
    /// <param name="warnings">What the reader of the file had to say; may be empty.</param>
    public static WatchState Answered(string version, ReviewFacts facts, string warnings)
    {
        var page = ReviewPage.Write(facts, new PageWatch(version, "The page follows every save of the file.") { Warnings = warnings });
        return new WatchState(version, page) { GoodPage = page, GoodFacts = facts };
    }

    /// <summary>After a run that gave none.</summary>
    /// <param name="version">Of the file.</param>
    /// <param name="file">Its name.</param>
    /// <param name="fault">Why, as a terminal would show it.</param>
    public WatchState Refused(string version, string file, string fault)
    {
        var older = GoodFacts is null
            ? null
            : ReviewPage.Write(GoodFacts, new PageWatch(version, "The file has been saved since and cannot be run: this page is of its last good version.") { IsOlder = true });
        return this with
        {
            Version = version,
            Page = NoticePage.Write(file, new PageWatch(version, "The scenario cannot be run."), fault, older is not null),
            GoodPage = older,
        };
    }
}
