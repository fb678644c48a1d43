using System.Collections.Immutable;
using System.Text.Json;
using Endurance.Studies.Spread;
using Endurance.Studies.Sweeps;

namespace Endurance.Reports;

/// <summary>A spread for programs: one JSON object, keys fixed.</summary>
public static class SpreadJson
{
    private const int Decimals = 6;

    /// <summary>Indented JSON that ends with a line feed; minutes are null where the share lasts beyond the horizon.</summary>
    public static string Write(SpreadResult result) => JsonText.Write(json =>
    {
        json.WriteString("scenario", result.Scenario.Title);
        json.WriteNumber("samples", result.Options.Samples);
        json.WriteNumber("seed", result.Options.Seed);
        JsonText.WriteArray(json, "cases", result.Cases, WriteCase);
        if (!result.Sensitivity.IsEmpty)
            JsonText.WriteArray(json, "sensitivity", Effects(result), (row, effect) => WriteEffect(row, result, effect.Row, effect.Case));
    });

    private static void WriteCase(Utf8JsonWriter json, SpreadCase one)
    {
        json.WriteString("name", one.Name);
        JsonText.Minutes(json, "p5_minutes", one.Quantile(0.05));
        JsonText.Minutes(json, "p50_minutes", one.Quantile(0.5));
        JsonText.Minutes(json, "p95_minutes", one.Quantile(0.95));
        json.WriteNumber("samples_chattering", one.BrokenOff);
        JsonText.WriteArray(json, "requirements", one.Requirements, WriteRequirement);
    }

    private static void WriteRequirement(Utf8JsonWriter json, SpreadRequirement judged)
    {
        json.WriteString("subject", SummaryTable.Subject(judged.Requirement));
        JsonText.Minutes(json, "endure_minutes", judged.Requirement.Endure);
        json.WriteNumber("samples_met", judged.Met);
        JsonText.Number(json, "probability", judged.Share, Decimals);
        JsonText.Number(json, "probability_low", judged.Interval.Low, Decimals);
        JsonText.Number(json, "probability_high", judged.Interval.High, Decimals);
    }

    private static ImmutableArray<(SensitivityRow Row, int Case)> Effects(SpreadResult result) =>
        [.. Enumerable.Range(0, result.Cases.Length).SelectMany(c => result.Ranked(c).Select(row => (row, c)))];

    private static void WriteEffect(Utf8JsonWriter json, SpreadResult result, SensitivityRow row, int caseIndex)
    {
        var kind = result.KindOf(row);
        json.WriteString("case", result.Cases[caseIndex].Name);
        json.WriteString("quantity", row.Quantity);
        if (row.IsGroup)
        {
            json.WriteStartArray("of_group");
            foreach (var tolerance in row.Tolerances)
                json.WriteStringValue(tolerance.Quantity);
            json.WriteEndArray();
        }

        json.WriteString("unit", QuantityText.Unit(kind));
        JsonText.Number(json, "low", QuantityText.InUnit(kind, row.Low.Value), Decimals);
        JsonText.Number(json, "high", QuantityText.InUnit(kind, row.High.Value), Decimals);
        JsonText.Minutes(json, "low_minutes", row.Low.Cases[caseIndex].Endurance);
        JsonText.Minutes(json, "high_minutes", row.High.Cases[caseIndex].Endurance);
    }
}
