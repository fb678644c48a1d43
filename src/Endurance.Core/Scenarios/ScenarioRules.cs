using System.Collections.Immutable;
using Endurance.Scenarios.Rules;

namespace Endurance.Scenarios;

/// <summary>Checks what no single value can show: names, references, and numbers that do not fit together.</summary>
public static class ScenarioRules
{
    /// <summary>Every finding at once, errors and warnings; empty for a sound scenario.</summary>
    /// <param name="scenario">Its values must each be within the ranges their types state.</param>
    /// <param name="namedDiodes">Diodes that have a name of their own, used or not; the default takes those that feeds use.</param>
    public static ImmutableArray<RuleFinding> Check(Scenario scenario, ImmutableArray<string> namedDiodes = default)
    {
        var diodes = namedDiodes.IsDefault
            ? [.. scenario.Feeds.Where(feed => feed.DiodeName is not null).Select(feed => feed.DiodeName!).Distinct(StringComparer.Ordinal)]
            : namedDiodes;
        ImmutableArray<RuleFinding> references = [.. ReferenceRules.Check(scenario)];
        return
        [
            .. NameRules.Check(scenario, diodes),
            .. references,
            .. TimelineRules.Check(scenario),
            .. RequirementRules.Check(scenario),
            .. SelectorRules.Check(scenario),
            .. NeedRules.Check(scenario),
            .. ThresholdRules.Check(scenario),
            .. PlausibilityRules.Check(scenario),
            .. references.IsEmpty ? FeedingRules.Check(scenario) : [], // a misspelt bus would look unfed
        ];
    }
}
