using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Which sources a failure case takes away, and which it leaves.</summary>
internal static class CaseSources
{
    /// <summary>Alternators that fail, are switched off or lose their engine at some step.</summary>
    public static ImmutableArray<Alternator> LostAlternators(Scenario scenario, FailureCase failureCase)
    {
        var lost = Lost(failureCase);
        return [.. scenario.Alternators.Where(alternator => lost.Contains(alternator.Name) || (alternator.DrivenBy is { } engine && lost.Contains(engine)))];
    }

    /// <summary>Buses of every battery and alternator that no step takes away.</summary>
    public static ImmutableArray<string> RemainingBuses(Scenario scenario, FailureCase failureCase)
    {
        var lost = Lost(failureCase);
        var gone = LostAlternators(scenario, failureCase);
        return
        [
            .. scenario.Batteries.Where(battery => !lost.Contains(battery.Name)).Select(battery => battery.Bus),
            .. scenario.Alternators.Where(alternator => alternator.IsOn && !gone.Contains(alternator)).Select(alternator => alternator.Bus),
        ];
    }

    private static HashSet<string> Lost(FailureCase failureCase) =>
        [.. failureCase.Timeline.SelectMany(step => step.Actions)
            .Where(action => action.Verb is ActionVerb.Fail or ActionVerb.Stop or ActionVerb.Shed)
            .Select(action => action.Target)];
}
