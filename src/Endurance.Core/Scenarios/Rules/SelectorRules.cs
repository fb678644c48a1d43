using System.Collections.Immutable;
using Endurance.Components;

namespace Endurance.Scenarios.Rules;

/// <summary>A selector has two positions or more, each with a feed of its own, and stands at one of them.</summary>
internal static class SelectorRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario) => scenario.Selectors.SelectMany(selector => Check(scenario, selector));

    /// <summary>The error for a position that a selector does not have.</summary>
    public static RuleFinding UnknownPosition(string path, string selector, string position, ImmutableArray<(string Position, string Feed)> positions)
    {
        ImmutableArray<string> known = [.. positions.Select(pair => pair.Position)];
        return RuleFinding.Error("unknown-name", path, position, $"the selector `{selector}` has no position `{position}`", $"one of {string.Join(", ", known)}", NearestName.Find(position, known));
    }

    private static IEnumerable<RuleFinding> Check(Scenario scenario, Selector selector)
    {
        var path = $"selectors.{selector.Name}";
        if (selector.Positions.Length < 2)
            yield return RuleFinding.Error("too-few-positions", $"{path}.positions", selector.Name, $"the selector `{selector.Name}` has fewer than two positions", "two or more, such as {normal: ignition_feed, backup: essential_normal}");
        else if (!selector.Positions.Any(position => string.Equals(position.Position, selector.At, StringComparison.Ordinal)))
            yield return UnknownPosition($"{path}.at", selector.Name, selector.At, selector.Positions);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (position, feed) in selector.Positions)
        {
            if (!scenario.Feeds.Any(known => string.Equals(known.Name, feed, StringComparison.Ordinal)))
                yield return ReferenceRules.Unknown($"{path}.positions.{position}", feed, "feed", [.. scenario.Feeds.Select(known => known.Name)]);
            else if (!taken.Add(feed))
                yield return RuleFinding.Error("feed-selected-twice", $"{path}.positions.{position}", feed, $"the selector `{selector.Name}` has the feed `{feed}` in two positions", "one position a feed");
        }
    }
}
