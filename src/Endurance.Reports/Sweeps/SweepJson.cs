using System.Text.Json;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports;

/// <summary>A sweep for programs: one JSON object, keys fixed.</summary>
public static class SweepJson
{
    private const int Decimals = 6;

    /// <summary>Indented JSON that ends with a line feed.</summary>
    public static string Write(SweepResult result) => JsonText.Write(json =>
    {
        json.WriteString("scenario", result.Scenario.Title);
        json.WriteString("quantity", result.Quantity.Path);
        json.WriteString("unit", result.Unit);
        JsonText.WriteArray(json, "points", result.Points, (row, point) =>
        {
            JsonText.Number(row, "value", QuantityText.InUnit(result.Quantity.Kind, point.Value), Decimals);
            JsonText.WriteArray(row, "cases", point.Cases, WriteCase);
        });
    });

    private static void WriteCase(Utf8JsonWriter json, CaseResult one)
    {
        json.WriteString("name", one.Name);
        json.WriteString("verdict", Wording.Of(one.Verdict));
        JsonText.Minutes(json, "endurance_minutes", one.Endurance);
        json.WriteString("limited_by", one.LimitedBy);
        JsonText.WriteBreakOff(json, one.BreakOff);
    }
}
