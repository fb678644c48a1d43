using System.Collections.Immutable;
using System.Text.Json;
using Endurance.Studies.LayoutComparison;
using static Endurance.Reports.JsonText;

namespace Endurance.Reports;

/// <summary>Layouts side by side, for programs.</summary>
public static class LayoutJson
{
    private const int Decimals = 4;

    /// <summary>Indented JSON that ends with a line feed; a time not reached within the horizon is <c>null</c>.</summary>
    public static string Write(ImmutableArray<LayoutResult> layouts) =>
        JsonText.Write(json => WriteArray(json, "layouts", layouts, WriteLayout));

    private static void WriteLayout(Utf8JsonWriter json, LayoutResult layout)
    {
        json.WriteString("name", layout.Name);
        json.WriteString("scenario", layout.Scenario.Title);
        json.WriteString("verdict", Wording.Of(layout.Verdict));
        json.WriteNumber("parts", layout.Parts);
        json.WriteNumber("single_failures_survived", layout.FailuresSurvived);
        json.WriteNumber("single_failures_tried", layout.FailuresTried);
        json.WriteNumber("findings", layout.Findings);
        json.WriteString("essential_bus", layout.Scenario.EssentialBus);
        WriteArray(json, "cases", layout.Cases, WriteCase);
    }

    private static void WriteCase(Utf8JsonWriter json, LayoutCase one)
    {
        json.WriteString("name", one.Result.Name);
        json.WriteString("verdict", Wording.Of(one.Result.Verdict));
        Minutes(json, "endurance_minutes", one.Result.Endurance);
        json.WriteString("limited_by", one.Result.LimitedBy);
        WriteBreakOff(json, one.Result.BreakOff);
        Number(json, "start_volts", one.StartVoltage?.Volts, Decimals);
        Number(json, "end_volts", one.EndVoltage?.Volts, Decimals);
        Number(json, "highest_diode_watts", one.HighestDiodePower?.Watts, Decimals);
        Number(json, "highest_junction_degc", one.HighestJunction?.Celsius, Decimals);
        json.WriteNumber("findings", one.Result.Findings.Length);
    }
}
