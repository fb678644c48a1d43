using System.Text.Json;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Reconciliation;
using static Endurance.Reports.JsonText;

namespace Endurance.Reports;

/// <summary>A reconciliation for programs: one JSON object.</summary>
public static class ReconciliationJson
{
    private const int Decimals = 5;

    /// <summary>Indented JSON that ends with a line feed; <c>null</c> minutes are beyond the horizon.</summary>
    public static string Write(ReconciliationResult result) => JsonText.Write(json =>
    {
        json.WriteString("scenario", result.Scenario.Title);
        json.WriteNumber("in_tolerance", result.Count(ReadingVerdict.InTolerance));
        json.WriteNumber("out_of_tolerance", result.Count(ReadingVerdict.OutOfTolerance));
        json.WriteNumber("not_measured", result.Count(ReadingVerdict.NotMeasured));
        WriteArray(json, "findings", result.Findings, WriteFinding);
        WriteArray(json, "cases", [.. result.Before.Zip(result.After)], WriteCase);
        WriteArray(json, "loads", result.Loads, WriteLoad);
        WriteArray(json, "readings", result.Readings, WriteReading);
    });

    private static void WriteCase(Utf8JsonWriter json, (CaseResult Before, CaseResult After) pair)
    {
        json.WriteString("name", pair.Before.Name);
        Minutes(json, "endurance_minutes_before", pair.Before.Endurance);
        Minutes(json, "endurance_minutes", pair.After.Endurance);
        json.WriteString("limited_by_before", pair.Before.LimitedBy);
        json.WriteString("limited_by", pair.After.LimitedBy);
        json.WriteString("verdict_before", Wording.Of(pair.Before.Verdict));
        json.WriteString("verdict", Wording.Of(pair.After.Verdict));
        WriteArray(json, "requirements", [.. pair.Before.Requirements.Zip(pair.After.Requirements)], WriteRequirement);
    }

    private static void WriteRequirement(Utf8JsonWriter json, (RequirementResult Before, RequirementResult After) pair)
    {
        json.WriteString("subject", SummaryTable.Subject(pair.Before.Requirement));
        Minutes(json, "endure_minutes", pair.Before.Requirement.Endure);
        Minutes(json, "endurance_minutes_before", pair.Before.Endurance);
        Minutes(json, "endurance_minutes", pair.After.Endurance);
        json.WriteString("verdict_before", Wording.Of(pair.Before.Verdict));
        json.WriteString("verdict", Wording.Of(pair.After.Verdict));
    }

    private static void WriteLoad(Utf8JsonWriter json, MeasuredLoad load)
    {
        json.WriteString("name", load.Drawn.Name);
        json.WriteNumber("point", load.Point);
        Number(json, "predicted_amps", load.Predicted, Decimals);
        Number(json, "measured_amps", load.Amperes, Decimals);
        json.WriteString("kind", DemandText.Key(load.Measured.Demand));
        json.WriteString("unit", DemandText.Unit(load.Measured.Demand));
        Number(json, "before", DemandText.Number(load.Drawn.Demand), Decimals);
        Number(json, "after", DemandText.Number(load.Measured.Demand), Decimals);
        json.WriteString("measured_on", load.Measured.MeasuredOn is { } date ? CellText.Date(date) : null);
    }

    private static void WriteReading(Utf8JsonWriter json, ComparedReading reading)
    {
        json.WriteNumber("point", reading.Point.Number);
        json.WriteString("title", reading.Point.Title);
        json.WriteString("quantity", Wording.Of(reading.Expected));
        json.WriteString("unit", reading.Expected.Unit);
        Number(json, "predicted", reading.Expected.Predicted, Decimals);
        Number(json, "tolerance", reading.Expected.Tolerance, Decimals);
        Number(json, "measured", reading.Measured, Decimals);
        Number(json, "deviation", reading.Deviation, Decimals);
        json.WriteString("verdict", Wording.Of(reading.Verdict));
    }
}
