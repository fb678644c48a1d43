using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Sizing;

namespace Endurance.Reports;

/// <summary>A sizing for people.</summary>
public static class SizingReport
{
    /// <summary>The answer, what it assumes, and every value tried.</summary>
    /// <param name="scenario">The scenario that was sized.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="withOffers">Shows every battery on offer, not only the smallest that passes.</param>
    public static ReportDocument Describe(Scenario scenario, SizingAnswer answer, bool withOffers)
    {
        var terms = SizingTerms.Of(answer.Question.Find);
        return new ReportDocument(
            scenario.Title,
            [
                Answer(terms, answer, scenario),
                new ReportParagraph(InWords(terms, answer, scenario)),
                .. StudyBlocks.ListUnlessEmpty("Warnings", Warnings(terms, answer)),
                .. OfferBlocks(scenario, answer, withOffers),
                Curve(terms, answer, scenario),
                .. StudyBlocks.Closing,
            ]);
    }

    private static string Subject(SizingAnswer answer) => answer.Question.Find switch
    {
        SizingFind.Load => " on " + answer.Question.Subject,
        SizingFind.Capacity or SizingFind.Health => " of " + answer.Question.Subject,
        _ => "",
    };

    private static ReportTable Answer(SizingTerms terms, SizingAnswer answer, Scenario scenario) => new(
        char.ToUpperInvariant(terms.Noun[0]) + terms.Noun[1..] + Subject(answer),
        [new(""), new(terms.Quantity), new("endurance", "min"), new("must last", "min"), new("case that decides"), new("lost first"), new("verdict")],
        [
            Row("as it stands", terms.WithUnit(answer.Present.Value), answer.Present, scenario),
            answer.Limit is { Limit: { } limit, AtLimit: { } at }
                ? Row(terms.Noun, Bound(terms, answer, limit), at, scenario)
                : Row(terms.Noun, "nothing tried passes", answer.Deciding, scenario),
        ]);

    private static string Bound(SizingTerms terms, SizingAnswer answer, double limit) =>
        terms.SafeWithUnit(limit) + (!answer.Limit.IsBeyondRange ? "" : terms.IsSmallest ? " or less" : " or more");

    private static ImmutableArray<ReportCell> Row(string first, string value, Trial trial, Scenario scenario) =>
    [
        first,
        value,
        CellText.MinutesWithin(trial.Endurance, scenario.Horizon, trial.DecidingBreakOff),
        trial.Required is { } required ? CellText.RoundMinutes(required) : CellText.Absent,
        trial.LimitedBy is null ? CellText.Absent : trial.Case,
        CellText.LostFirst(trial.LimitedBy, trial.Endurance, trial.DecidingBreakOff),
        Judged(trial),
    ];

    private static ReportCell Judged(Trial trial) => CellText.Judged(trial.Passes ? Verdict.Pass : Verdict.Fail, trial.BreakOff);

    private static string InWords(SizingTerms terms, SizingAnswer answer, Scenario scenario)
    {
        var present = answer.Question.Find switch
        {
            SizingFind.Capacity or SizingFind.Health => $"{answer.Question.Subject} has {terms.WithUnit(answer.Present.Value)} now, with which the requirements are {(answer.Present.Passes ? "met" : "not met")}. ",
            _ => $"As it stands the requirements are {(answer.Present.Passes ? "met" : "not met")}. ",
        };
        return present + Found(terms, answer) + Decides(answer) + Assumed(answer, scenario);
    }

    private static string Found(SizingTerms terms, SizingAnswer answer)
    {
        var (curve, limit) = (answer.Limit.Curve, answer.Limit);
        var (low, high) = (terms.WithUnit(curve[0].Value), terms.WithUnit(curve[^1].Value));
        if (limit.Limit is not { } edge)
            return $"No value from {low} to {high} meets every requirement in every case. ";
        if (limit.IsBeyondRange)
            return $"Every value from {low} to {high} meets every requirement, so the limit lies beyond. ";
        var words = terms.SafeWithUnit(edge);
        return answer.Question.Find switch
        {
            SizingFind.Capacity => $"It needs {words} to meet every requirement in every case. ",
            SizingFind.Health => $"Down to {words} every requirement is met; replace it before a capacity test gives less. ",
            SizingFind.Load => $"A further constant current of up to {words} on {answer.Question.Subject} leaves every requirement met. ",
            SizingFind.Delay => $"Everything the pilot does after zero may come up to {words} later than written. ",
            _ => $"Every shedding may come up to {words} later than written. ",
        };
    }

    private static string Decides(SizingAnswer answer) => !CellText.IsKnown(answer.Deciding.Endurance, answer.Deciding.DecidingBreakOff)
        ? $"The case {answer.Deciding.Case} decides, which cannot be run to its end. "
        : answer.Deciding.LimitedBy is { } part
        ? $"The case {answer.Deciding.Case} and {part} decide. "
        : "Nothing that a requirement names is lost within the horizon. ";

    private static string Assumed(SizingAnswer answer, Scenario scenario) => answer.Question switch
    {
        { Find: SizingFind.Capacity, KeepsResistance: true } => "Assumed: another size has the same resistance, health, temperature and shape of discharge.",
        { Find: SizingFind.Capacity } => "Assumed: resistance falls as 1/capacity (twice the capacity, half the resistance); health, temperature and shape of discharge stay.",
        { Find: SizingFind.Health, Subject: var name } when scenario.Batteries.Any(battery => battery.ResistanceWhenNew is not null && string.Equals(battery.Name, name, StringComparison.Ordinal)) =>
            "Assumed: capacity falls with health, and the resistance, which is of the library, grows as 1/health.",
        { Find: SizingFind.Health } => "Assumed: health changes capacity alone; a resistance that grows with age is not in it.",
        _ => "",
    };

    private static ImmutableArray<string> Warnings(SizingTerms terms, SizingAnswer answer) => [.. TurnsBack(terms, answer), .. BreaksOff(terms, answer)];

    private static IEnumerable<string> BreaksOff(SizingTerms terms, SizingAnswer answer)
    {
        if (answer.Limit.BrokenOff is > 0 and var count && answer.Limit.Curve.First(trial => trial.BreakOff is not null).BreakOff is { } breakOff)
        {
            yield return $"At {RoundedNumber.Short(count, 0)} of {RoundedNumber.Short(answer.Limit.Curve.Length, 0)} values of {terms.Quantity} a case cannot be run to its end and counts as failed; at the first, {breakOff.Words}. {breakOff.Remedy}";
        }
    }

    private static IEnumerable<string> TurnsBack(SizingTerms terms, SizingAnswer answer) => answer.Limit.IsNotMonotonic
        ? [$"The answer turns back: beyond the limit some values of {terms.Quantity} {(terms.IsSmallest ? "below" : "above")} it pass again. Shedding, dropped loads or battery protection can do that. The limit given is the first met from the safe end; read the table of values."]
        : [];

    private static IEnumerable<ReportBlock> OfferBlocks(Scenario scenario, SizingAnswer answer, bool withOffers)
    {
        var tried = scenario.BatteriesOnOffer.Zip(answer.Offers).OrderBy(pair => pair.First.Capacity).ThenBy(pair => pair.First.Kilograms).ToImmutableArray();
        if (tried.IsEmpty)
            yield break;
        yield return new ReportParagraph(tried.FirstOrDefault(pair => pair.Second.Passes) is { First: { } smallest }
            ? $"Of the {tried.Length} batteries on offer the smallest that passes is {smallest.Name}: {Rated(smallest)}{Mass(smallest)}."
            : $"None of the {tried.Length} batteries on offer passes.");
        if (withOffers)
        {
            yield return new ReportTable(
                "Batteries on offer, each in place of " + answer.Question.Subject,
                [new("battery"), new("rated"), new("mass", "kg"), new("endurance", "min"), new("case that decides"), new("lost first"), new("verdict")],
                [.. tried.Select(pair => StudyBlocks.Row(
                    pair.First.Name,
                    Rated(pair.First),
                    pair.First.Kilograms is { } mass ? RoundedNumber.Short(mass, 2) : CellText.Absent,
                    CellText.MinutesWithin(pair.Second.Endurance, scenario.Horizon, pair.Second.DecidingBreakOff),
                    pair.Second.Case,
                    CellText.LostFirst(pair.Second.LimitedBy, pair.Second.Endurance, pair.Second.DecidingBreakOff),
                    Judged(pair.Second)))]);
        }
    }

    private static string Rated(BatteryOnOffer offer) =>
        $"{RoundedNumber.Short(offer.Capacity.AmpereHours, 2)} Ah at {RoundedNumber.Short(offer.Rate.Hours, 2)} h";

    private static string Mass(BatteryOnOffer offer) => offer.Kilograms is { } mass ? $", {RoundedNumber.Short(mass, 2)} kg" : "";

    private static ReportTable Curve(SizingTerms terms, SizingAnswer answer, Scenario scenario) => new(
        "Values tried",
        [new(terms.Quantity, terms.Unit), new("endurance", "min"), new("must last", "min"), new("case that decides"), new("lost first"), new("verdict")],
        [.. answer.Limit.Curve.Select(trial => Row("", RoundedNumber.Short(terms.InUnit(trial.Value), 2), trial, scenario).RemoveAt(0))]);
}
