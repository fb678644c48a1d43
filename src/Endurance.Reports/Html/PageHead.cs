using System.Collections.Immutable;

namespace Endurance.Reports.Html;

/// <summary>What a page is before anything stands on it.</summary>
/// <param name="Title">Plain text.</param>
internal sealed record PageHead(string Title)
{
    /// <summary>A class of the style sheet; <c>form</c> has cells to write in.</summary>
    public string Kind { get; init; } = "reading";

    /// <summary>The program's own, run after the page stands.</summary>
    public ImmutableArray<string> Scripts { get; init; } = [];

    /// <summary>The page may ask the server it came from; no page may ask any other.</summary>
    public bool AsksItsServer { get; init; }
}
