using System.Text.Json;
using Endurance.Studies.SingleFailures;

namespace Endurance.Reports;

/// <summary>Failures for programs: one JSON object, keys fixed.</summary>
public static class FailureJson
{
    /// <summary>Indented JSON that ends with a line feed.</summary>
    public static string Write(FailureStanding standing) => JsonText.Write(json =>
    {
        JsonText.WriteArray(json, "rows", standing.Rows, WriteRow);
        JsonText.WriteArray(json, "not_tried", standing.Untried, WriteUntried);
    });

    private static void WriteUntried(Utf8JsonWriter json, UntriedFailure untried)
    {
        json.WriteString("part", untried.Part);
        json.WriteString("mode", PartFailure.WordOf(untried.Mode));
        json.WriteString("why", untried.Why);
    }

    private static void WriteRow(Utf8JsonWriter json, FailureRow row)
    {
        json.WriteString("part", row.Part);
        json.WriteString("mode", row.Mode);
        json.WriteString("case", row.Case);
        JsonText.Minutes(json, "endurance_minutes", row.Endurance);
        json.WriteString("verdict", Wording.Of(row.Verdict));
        json.WriteStartArray("lost");
        foreach (var load in row.Lost)
            json.WriteStringValue(load);
        json.WriteEndArray();
        JsonText.WriteBreakOff(json, row.BreakOff);
        json.WriteString("revealed_by", row.RevealedBy);
    }
}
