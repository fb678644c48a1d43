using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.Adjustment;

/// <summary>Moves what the pilot does.</summary>
internal static class Recognition
{
    /// <summary>Every step after zero that opens, closes, sheds, connects, starts, restores or selects comes so many seconds later.</summary>
    public static Scenario Later(Scenario scenario, double seconds) => Moved(scenario, seconds, IsPilots);

    /// <summary>Every step that sheds comes so many seconds later.</summary>
    public static Scenario ShedLater(Scenario scenario, double seconds) =>
        Moved(scenario, seconds, Sheds);

    private static Scenario Moved(Scenario scenario, double seconds, Func<TimelineStep, bool> which)
    {
        TimelineStep Move(TimelineStep step) => which(step) ? step with { Trigger = Delayed(step.Trigger, Duration.FromSeconds(seconds)) } : step;
        return scenario with
        {
            FailureCases = [.. scenario.FailureCases.Select(one => one with { Timeline = [.. one.Timeline.Select(Move)] })],
        };
    }

    private static Trigger Delayed(Trigger trigger, Duration later) => trigger switch
    {
        AtTime at => at with { Time = at.Time + later },
        WhenBelow low => low with { For = low.For + later },
        WhenWarned warned => warned with { RecognisedAfter = warned.RecognisedAfter + later },
        _ => trigger,
    };

    /// <summary>Whether a step sheds.</summary>
    public static bool Sheds(TimelineStep step) => step.Actions.Any(action => action.Verb == ActionVerb.Shed);

    /// <summary>Whether the pilot acts in a step, after zero.</summary>
    public static bool IsPilots(TimelineStep step) =>
        step.Trigger is not AtTime { Time.Seconds: 0 } && step.Actions.Any(action => action.Verb is ActionVerb.Open or ActionVerb.Close
            or ActionVerb.Shed or ActionVerb.Connect or ActionVerb.Start or ActionVerb.Restore or ActionVerb.Select);
}
