namespace Endurance.Cli.Watching;

/// <summary>Tells a finished save from a moment in the middle of one, by looks at even intervals.</summary>
/// <remarks>
/// An editor may empty a file and then write it, or write another and rename it, so what a single look finds may be half a
/// scenario or nothing. Contents count once two looks in a row agree, and a missing file only after several.
/// </remarks>
/// <param name="Known">Version last told of.</param>
internal sealed record SettledFile(string Known)
{
    private const int LooksAtContents = 2, LooksAtNothing = 6;

    private string Seen { get; init; } = Known;

    private int Times { get; init; }

    /// <summary>What is known after one more look; <see cref="IsNews"/> says whether it told something.</summary>
    public SettledFile After(FileLook look)
    {
        var version = look.Version;
        var times = string.Equals(version, Seen, StringComparison.Ordinal) ? Times + 1 : 1;
        var isSettled = times >= (look.Bytes is { Length: > 0 } ? LooksAtContents : LooksAtNothing);
        var isNews = isSettled && !string.Equals(version, Known, StringComparison.Ordinal);
        return new SettledFile(isNews ? version : Known) { Seen = version, Times = times, IsNews = isNews };
    }

    /// <summary>The last look settled on a version other than the one known before.</summary>
    public bool IsNews { get; private init; }
}
