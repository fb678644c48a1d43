using System.Text.Json;
using Endurance.Studies.BatteryFit;
using static Endurance.Reports.JsonText;

namespace Endurance.Reports;

/// <summary>A fit for programs: one JSON object.</summary>
public static class BatteryFitJson
{
    private const int Decimals = 6;

    /// <summary>Indented JSON that ends with a line feed; what was not measured is <c>null</c>.</summary>
    /// <param name="log">Name of the log.</param>
    /// <param name="result">Its fit.</param>
    public static string Write(string log, BatteryFitResult result) => JsonText.Write(json =>
    {
        json.WriteString("log", log);
        json.WriteString("discharge_sign", result.Discharges.IsDischargePositive ? "positive" : "negative");
        WriteArray(json, "runs", result.Runs, WriteRun);
        Number(json, "pivot_amps", result.Law.Pivot.Amperes, Decimals);
        Fitted(json, "capacity_amp_hours", result.Law.PivotAmpereHours);
        Fitted(json, "capacity_rate_hours", result.Law.PivotHours);
        Fitted(json, "peukert", result.Law.IsExponentMeasured || result.Law.IsExponentGiven ? result.Law.Exponent : null);
        Fitted(json, "resistance_ohms", Resistance(result));
        Fitted(json, "health", result.Health);
        WriteArray(json, "emf", result.Emf, WriteKnot);
        WriteArray(json, "capacity_tests", result.Tests, WriteTest);
        WriteArray(json, "findings", result.Findings, WriteFinding);
        json.WriteString("battery_yaml", BatteryFragment.Write(log, result));
    });

    private static FittedValue? Resistance(BatteryFitResult result)
    {
        if (result.IsResistanceMeasured)
            return result.Steps.Ohms;
        return result.IsResistanceKnown ? new FittedValue(result.Resistance.Ohms, null) : null;
    }

    private static void WriteRun(Utf8JsonWriter json, RunFit run)
    {
        json.WriteNumber("number", run.Run.Number);
        json.WriteString("role", FitText.Role(run));
        Minutes(json, "start_minutes", run.Run.Start);
        Minutes(json, "minutes", run.Run.Length);
        Number(json, "mean_amps", run.Run.MeanCurrent.Amperes, Decimals);
        Number(json, "amp_hours", run.Run.Delivered.AmpereHours, Decimals);
        Number(json, "rest_volts", run.Run.RestVoltage?.Volts, Decimals);
        Number(json, "lowest_volts", run.Run.LowestVoltage.Volts, Decimals);
        Number(json, "temperature_degc", run.Run.Temperature?.Celsius, Decimals);
        Number(json, "rms_volts", run.RootMeanSquareVolts, Decimals);
        WriteArray(json, "ends", run.Ends, WriteEnd);
    }

    private static void WriteEnd(Utf8JsonWriter json, EndTime end)
    {
        Number(json, "volts", end.Voltage.Volts, Decimals);
        Minutes(json, "measured_minutes", end.Measured);
        Minutes(json, "predicted_minutes", end.Predicted);
        Number(json, "error", end.Error, Decimals);
        Minutes(json, "predicted_minutes_as_written", end.PredictedAsWritten);
        Number(json, "error_as_written", end.ErrorAsWritten, Decimals);
    }

    private static void WriteKnot(Utf8JsonWriter json, EmfKnot knot)
    {
        Number(json, "charge", knot.Charge, Decimals);
        Number(json, "volts", knot.Volts.Value, Decimals);
        Number(json, "standard_error", knot.Volts.StandardError, Decimals);
    }

    private static void WriteTest(Utf8JsonWriter json, CapacityTest test)
    {
        json.WriteNumber("run", test.Run);
        Number(json, "to_volts", test.EndVoltage.Volts, Decimals);
        json.WriteBoolean("end_reached", test.IsEndReached);
        Minutes(json, "minutes", test.Time);
        Number(json, "fraction_of_rating", test.Fraction, Decimals);
        json.WriteString("verdict", test.IsPassed ? "pass" : "fail");
    }

    private static void Fitted(Utf8JsonWriter json, string key, FittedValue? value)
    {
        json.WriteStartObject(key);
        Number(json, "value", value?.Value, Decimals);
        Number(json, "standard_error", value?.StandardError, Decimals);
        json.WriteEndObject();
    }
}
