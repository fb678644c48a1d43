using System.Text.Json;
using Endurance.Studies.BatteryCurves;

namespace Endurance.Reports;

/// <summary>A battery's curve for programs: one JSON object, keys fixed.</summary>
public static class BatteryCurveJson
{
    private const int AmpereDecimals = 6;

    /// <summary>Indented JSON that ends with a line feed.</summary>
    public static string Write(BatteryCurve curve) => JsonText.Write(json =>
    {
        json.WriteString("battery", curve.Battery.Name);
        JsonText.WriteArray(json, "rows", curve.Rows, WriteRow);
    });

    private static void WriteRow(Utf8JsonWriter json, BatteryCurveRow row)
    {
        JsonText.Number(json, "amps", row.Current.Amperes, AmpereDecimals);
        JsonText.Minutes(json, "minutes", row.Lasts);
        JsonText.Minutes(json, "minutes_kinetic", row.LastsKinetic);
        JsonText.Minutes(json, "given_minutes", row.Given);
    }
}
