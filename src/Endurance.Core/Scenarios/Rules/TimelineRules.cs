using System.Collections.Immutable;
using static System.FormattableString;

namespace Endurance.Scenarios.Rules;

/// <summary>Every action of a timeline has a target it can work on, and a landing connects loads.</summary>
internal static class TimelineRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario)
    {
        var targets = new ActionTargets(scenario);
        foreach (var fault in LandingFaults(scenario, scenario.Landing, "landing"))
            yield return fault;
        foreach (var failure in scenario.FailureCases)
        {
            foreach (var fault in LandingFaults(scenario, failure.Landing, $"failure_cases.{failure.Name}.landing"))
                yield return fault;
            foreach (var (step, index) in failure.Timeline.Select((step, index) => (step, index)))
            {
                var path = Invariant($"failure_cases.{failure.Name}.timeline.{index}");
                if (TriggerFault(scenario, step.Trigger, path) is { } fault)
                    yield return fault;
                if (step.Actions.IsEmpty)
                    yield return RuleFinding.Warning("step-does-nothing", path, "", "the step does nothing: it has no action on any part", "an action such as fail: [engine_alternator], or no step");
                foreach (var action in step.Actions)
                {
                    if (targets.FaultOf(action, $"{path}.{ActionTargets.Word(action.Verb)}.{action.Target}") is { } wrong)
                        yield return wrong;
                }
            }
        }
    }

    private static IEnumerable<RuleFinding> LandingFaults(Scenario scenario, Landing? landing, string path)
    {
        ImmutableArray<string> loads = [.. scenario.Loads.Select(load => load.Name)];
        return (landing?.Connect ?? []).Where(load => !loads.Contains(load, StringComparer.Ordinal))
            .Select(load => ReferenceRules.Unknown($"{path}.connect.{load}", load, "load", loads));
    }

    private static RuleFinding? TriggerFault(Scenario scenario, Trigger trigger, string path) => trigger switch
    {
        WhenBelow below when !scenario.Buses.Any(bus => string.Equals(bus.Name, below.Bus, StringComparison.Ordinal)) =>
            ReferenceRules.Unknown($"{path}.when.bus", below.Bus, "bus", [.. scenario.Buses.Select(bus => bus.Name)]),
        WhenWarned warned when !scenario.Warnings.Any(warning => string.Equals(warning.Name, warned.Warning, StringComparison.Ordinal)) =>
            ReferenceRules.Unknown($"{path}.when.warning", warned.Warning, "low-voltage warning", [.. scenario.Warnings.Select(warning => warning.Name)]),
        AtTime at when at.Time > scenario.Horizon => RuleFinding.Warning(
            "step-beyond-horizon", $"{path}.at", Invariant($"{at.Time.Minutes:0.###} min"),
            Invariant($"the step at {at.Time.Minutes:0.###} min comes after the horizon of {scenario.Horizon.Minutes:0.###} min and is never taken"),
            "an earlier time, or a longer `horizon`"),
        _ => null,
    };
}
