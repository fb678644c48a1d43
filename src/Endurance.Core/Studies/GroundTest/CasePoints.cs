using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Studies.GroundTest;

/// <summary>The steps of each failure case, one after the other, with the engine stopped.</summary>
internal static class CasePoints
{
    public static IEnumerable<TestPoint> Of(Scenario scenario, FailureCase failureCase)
    {
        string[] on = [.. scenario.Loads.Where(load => load.IsOn && !PointMaker.IsShort(scenario, load.Name)).Select(load => load.Name)];
        var setup = TestSetup.EngineStopped(scenario).WithLoads(on).Say("Contacts as drawn; batteries connected.");
        for (var i = 0; i < failureCase.Timeline.Length; i++)
        {
            var step = failureCase.Timeline[i];
            if (step.Actions.Any(action => action.Verb == ActionVerb.ShortCell))
                yield break;
            var actions = step.Actions.Where(action => CanBeDone(scenario, action)).ToImmutableArray();
            if (actions.IsEmpty)
                continue;
            setup = actions.Aggregate(setup with { Steps = setup.Steps.AddRange(actions) }, (said, action) => said.Say(InWords(action)));
            var readings = setup.Measure();
            yield return PointMaker.Make(
                TestGroup.Transfer,
                FormattableString.Invariant($"{failureCase.Name}, step {i + 1}"),
                [failureCase.Name, .. actions.Select(action => action.Target)],
                setup,
                readings.Everything(),
                [InFlight(step.Trigger), .. LeftOut(step, actions)]);
        }
    }

    /// <summary>Nothing on the ground stands for an engine or its alternators, and a starter would turn the propeller.</summary>
    private static bool CanBeDone(Scenario scenario, TimelineAction action) =>
        !EnduranceRun.IsOfEngine(scenario, action) && action.Verb is not (ActionVerb.Idle or ActionVerb.Cruise)
        && !scenario.Warnings.Any(warning => string.Equals(warning.Name, action.Target, StringComparison.Ordinal))
        && !(action.Verb == ActionVerb.Connect && PointMaker.IsShort(scenario, action.Target));

    private static IEnumerable<string> LeftOut(TimelineStep step, ImmutableArray<TimelineAction> actions)
    {
        var left = step.Actions.Except(actions).Select(action => action.Target).ToList();
        return left.Count == 0 ? [] : [$"Left out on the ground: {string.Join(", ", left)}."];
    }

    private static string InWords(TimelineAction action) => action.Verb switch
    {
        ActionVerb.Open => $"Then open {action.Target}.",
        ActionVerb.Close => $"Then close {action.Target}.",
        ActionVerb.Shed => $"Then switch {action.Target} off.",
        ActionVerb.Connect => $"Then switch {action.Target} on.",
        ActionVerb.Short => $"Then bridge the diode of {action.Target} with a fused jumper.",
        ActionVerb.Break or ActionVerb.Fail or ActionVerb.Stop => $"Then disconnect {action.Target}.",
        ActionVerb.Select => $"Then turn {action.Target} to {action.Position}.",
        _ => $"Then put {action.Target} back as it was.",
    };

    private static string InFlight(Trigger trigger) => trigger switch
    {
        AtTime at => FormattableString.Invariant($"In flight at {at.Time.Minutes:0.#} min."),
        WhenBelow below => FormattableString.Invariant($"In flight when {below.Bus} has been below {below.Below.Volts:0.##} V for {below.For.Seconds:0.#} s."),
        WhenWarned warned => FormattableString.Invariant($"In flight {warned.RecognisedAfter.Minutes:0.#} min after {warned.Warning} has come on."),
        _ => throw new ArgumentOutOfRangeException(nameof(trigger), trigger, "Unknown trigger."),
    };
}
