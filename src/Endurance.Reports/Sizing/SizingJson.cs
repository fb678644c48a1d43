using System.Text.Json;
using Endurance.Scenarios;
using Endurance.Studies.Sizing;

namespace Endurance.Reports;

/// <summary>A sizing for programs: one JSON object, keys fixed.</summary>
public static class SizingJson
{
    private const int Decimals = 4;

    /// <summary>Indented JSON that ends with a line feed.</summary>
    /// <param name="scenario">Holds the batteries on offer.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="withOffers">Adds a trial of each battery on offer.</param>
    public static string Write(Scenario scenario, SizingAnswer answer, bool withOffers) => JsonText.Write(json =>
    {
        var terms = SizingTerms.Of(answer.Question.Find);
        if (answer.Question.Subject.Length > 0)
            json.WriteString(answer.Question.Find == SizingFind.Load ? "bus" : "battery", answer.Question.Subject);
        JsonText.Number(json, terms.LimitKey, answer.Limit.Limit is { } limit ? terms.Safe(limit, Decimals) : null, Decimals);
        json.WriteStartObject("limited_by");
        var hasLoss = answer.Deciding.LimitedBy is not null;
        json.WriteString("case", hasLoss ? answer.Deciding.Case : null);
        json.WriteString("load", answer.Deciding.LimitedBy);
        json.WriteEndObject();
        JsonText.WriteArray(json, "curve", answer.Limit.Curve, (row, trial) =>
        {
            JsonText.Number(row, terms.ValueKey, terms.InUnit(trial.Value), Decimals);
            JsonText.Minutes(row, "endurance_minutes", trial.Endurance);
            JsonText.WriteBreakOff(row, trial.BreakOff);
        });
        if (withOffers)
            JsonText.WriteArray(json, "offers", [.. scenario.BatteriesOnOffer.Zip(answer.Offers)], WriteOffer);
    });

    private static void WriteOffer(Utf8JsonWriter json, (BatteryOnOffer Offer, Trial Trial) tried)
    {
        json.WriteString("name", tried.Offer.Name);
        JsonText.Number(json, "capacity_amp_hours", tried.Offer.Capacity.AmpereHours, Decimals);
        JsonText.Number(json, "mass_kilograms", tried.Offer.Kilograms, Decimals);
        JsonText.Minutes(json, "endurance_minutes", tried.Trial.Endurance);
        json.WriteString("verdict", tried.Trial.Passes ? "pass" : "fail");
    }
}
