using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Steps that nobody could take as soon as the case has them taken.</summary>
internal static class RecognitionFindings
{
    public static IEnumerable<Finding> Of(FailureCase failureCase) => [.. AtTheFailure(failureCase), .. AtOnce(failureCase)];

    private static IEnumerable<Finding> AtTheFailure(FailureCase failureCase)
    {
        var failure = failureCase.Timeline
            .Where(step => step.Trigger is AtTime && step.Actions.Any(action => IsFailure(action.Verb)))
            .Select(step => (Duration?)((AtTime)step.Trigger).Time)
            .Min();
        if (failure is not { } time)
            yield break;
        string[] acted = [.. failureCase.Timeline
            .Where(step => step.Trigger is AtTime at && at.Time == time)
            .SelectMany(step => step.Actions)
            .Where(action => IsPilots(action.Verb))
            .Select(action => action.Target)
            .Distinct(StringComparer.Ordinal)];
        if (acted.Length == 0)
            yield break;
        var value = Figures.Minutes(time);
        yield return new Finding("no-recognition-delay", Severity.Warning, failureCase.Name, value,
            $"The pilot acts on {Figures.Names(acted)} at {value}, the instant of the failure itself. Nobody notices and decides in no time: give the step a later time, or let it wait for a warning.");
    }

    /// <summary>Waiting steps that act at the very instant a voltage or a warning tells of it.</summary>
    private static IEnumerable<Finding> AtOnce(FailureCase failureCase) =>
        from step in failureCase.Timeline
        let what = step.Trigger switch
        {
            WhenBelow { For.Seconds: 0 } low => low.Bus,
            WhenWarned { RecognisedAfter.Seconds: 0 } warned => warned.Warning,
            _ => null,
        }
        where what is not null && step.Actions.Any(action => IsPilots(action.Verb) || action.Verb == ActionVerb.Open)
        let names = Figures.Names([.. step.Actions.Select(action => action.Target).Distinct(StringComparer.Ordinal)])
        select new Finding("no-recognition-delay", Severity.Caution, failureCase.Name, "0 s",
            $"{names} answer to {what} with no delay at all. A relay may do that; a pilot needs time to notice and decide. Give `for` or `recognised_after`.");

    private static bool IsFailure(ActionVerb verb) => verb is ActionVerb.Fail or ActionVerb.Stop or ActionVerb.Short or ActionVerb.Break or ActionVerb.ShortCell;

    /// <summary>Opening is left out: an open contactor may be the failure itself.</summary>
    private static bool IsPilots(ActionVerb verb) => verb is ActionVerb.Shed or ActionVerb.Connect or ActionVerb.Close or ActionVerb.Select;
}
