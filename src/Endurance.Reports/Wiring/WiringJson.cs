using System.Text.Json;
using Endurance.Studies;
using Endurance.Studies.Wiring;
using static Endurance.Reports.JsonText;

namespace Endurance.Reports;

/// <summary>Judged wires for programs: one JSON object, keys fixed.</summary>
public static class WiringJson
{
    private const int Decimals = 4;

    /// <summary>Indented JSON that ends with a line feed; what the tables do not tell is <c>null</c>.</summary>
    public static string Write(WiringResult result) => JsonText.Write(json =>
    {
        WriteArray(json, "rows", result.Rows, WriteRow);
        if (!result.LeftOut.IsEmpty)
            WriteArray(json, "chattering", result.LeftOut, WriteLeftOut);
    });

    private static void WriteLeftOut(Utf8JsonWriter json, LeftOut one)
    {
        json.WriteString("case", one.What);
        WriteBreakOffMembers(json, one.BreakOff);
    }

    private static void WriteRow(Utf8JsonWriter json, WiringRow row)
    {
        json.WriteString("part", row.Part);
        json.WriteString("gauge", row.Run.Gauge.ToString());
        Number(json, "amps", row.Deciding.Amperes, Decimals);
        Number(json, "drop_volts", row.Drop.Volts, Decimals);
        Number(json, "limit_volts", row.Limit.Volts, Decimals);
        Number(json, "rating_amps", row.Rating?.Amperes, Decimals);
        Number(json, "protection_amps", row.Protection?.Rating.Amperes, Decimals);
        json.WriteString("verdict", Wording.Of(row.Verdict));
        WriteArray(json, "findings", row.Findings, WriteFinding);
    }
}
