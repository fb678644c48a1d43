using System.Text.Json;
using Endurance.Scenarios;
using Endurance.Studies.LoadAnalysis;
using static Endurance.Reports.JsonText;

namespace Endurance.Reports;

/// <summary>The load analysis for programs: one JSON object.</summary>
public static class LoadAnalysisJson
{
    private const int Decimals = 4;

    /// <summary>Indented JSON that ends with a line feed; a phase of <c>null</c> is every phase, a bus of <c>null</c> all buses.</summary>
    public static string Write(Scenario scenario, LoadAnalysisResult result) => JsonText.Write(json =>
    {
        json.WriteString("scenario", scenario.Title);
        Number(json, "nominal_volts", scenario.NominalVoltage.Volts, Decimals);
        WriteArray(json, "loads", result.Items, WriteItem);
        WriteArray(json, "totals", result.Totals, WriteTotal);
        WriteArray(json, "alternators", result.Shares, WriteShare);
        WriteArray(json, "amp_minutes", result.AmpMinutes, WriteComparison);
        WriteArray(json, "findings", result.Findings, WriteFinding);
    });

    private static void WriteItem(Utf8JsonWriter json, LoadItem item)
    {
        json.WriteString("name", item.Name);
        json.WriteString("bus", item.Bus);
        json.WriteString("phase", item.Phase);
        json.WriteBoolean("on", item.IsOn);
        json.WriteString("kind", LoadAnalysisReport.Kind(item));
        Number(json, "nominal_volts", item.Nominal.Volts, Decimals);
        Number(json, "amps", item.Draw.Amperes, Decimals);
        Number(json, "duty_percent", item.Duty * 100, Decimals);
        Number(json, "mean_amps", item.Mean.Amperes, Decimals);
        Number(json, "peak_amps", item.Peak.Amperes, Decimals);
        json.WriteString("basis", item.Basis is { } basis ? Wording.Of(basis) : null);
        json.WriteString("measured_on", item.MeasuredOn is { } date ? CellText.Date(date) : null);
    }

    private static void WriteTotal(Utf8JsonWriter json, LoadTotal total)
    {
        json.WriteString("phase", total.Phase);
        json.WriteString("bus", total.Bus);
        Number(json, "continuous_amps", total.Continuous.Amperes, Decimals);
        Number(json, "intermittent_amps", total.Intermittent.Amperes, Decimals);
        Number(json, "mean_amps", total.Mean.Amperes, Decimals);
        Number(json, "peak_amps", total.Peak.Amperes, Decimals);
    }

    private static void WriteShare(Utf8JsonWriter json, AlternatorShare share)
    {
        json.WriteStartArray("alternators");
        foreach (var name in share.Alternators)
            json.WriteStringValue(name);
        json.WriteEndArray();
        json.WriteString("phase", share.Phase);
        Number(json, "rated_amps", share.Rated.Amperes, Decimals);
        Number(json, "mean_amps", share.Load.Mean.Amperes, Decimals);
        Number(json, "share_percent", share.Fraction * 100, Decimals);
        Number(json, "limit_percent", AlternatorShare.Limit * 100, Decimals);
        json.WriteString("verdict", share.IsWithin ? "pass" : "fail");
    }

    private static void WriteComparison(Utf8JsonWriter json, AmpMinuteComparison compared)
    {
        var form = compared.Form;
        json.WriteString("case", compared.Case);
        Number(json, "usable_amp_hours", form.Usable.AmpereHours, Decimals);
        Number(json, "before_amps", form.Before.Amperes, Decimals);
        Minutes(json, "before_minutes", form.TimeBefore);
        Number(json, "landing_amps", form.Landing.Amperes, Decimals);
        Minutes(json, "landing_minutes", form.TimeLanding);
        Number(json, "cruise_amps", form.Shed.Amperes, Decimals);
        Minutes(json, "cruise_minutes", form.Cruise);
        Minutes(json, "total_minutes", form.Total);
        Minutes(json, "simulated_minutes", compared.Simulated);
        json.WriteStartArray("why");
        foreach (var sentence in compared.Why)
            json.WriteStringValue(sentence);
        json.WriteEndArray();
    }
}
