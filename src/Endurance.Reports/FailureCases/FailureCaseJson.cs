using System.Collections.Immutable;
using System.Text.Json;
using Endurance.Findings;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using static Endurance.Reports.JsonText;

namespace Endurance.Reports;

/// <summary>The answer for programs: one JSON object, keys fixed.</summary>
public static class FailureCaseJson
{
    private const int VoltDecimals = 4;
    private const int AmpereDecimals = 6;
    private const int WattDecimals = 7;
    private const int ChargeDecimals = 6;
    private const int TemperatureDecimals = 4;

    /// <summary>Indented JSON that ends with a line feed; a time not reached within the horizon is <c>null</c>.</summary>
    /// <param name="scenario">Title or path that the reader knows the scenario by.</param>
    /// <param name="cases">In the order to be written.</param>
    public static string Write(string scenario, ImmutableArray<CaseResult> cases) => JsonText.Write(json =>
    {
        json.WriteString("scenario", scenario);
        WriteArray(json, "cases", cases, WriteCase);
    });

    private static void WriteCase(Utf8JsonWriter json, CaseResult result)
    {
        json.WriteString("name", result.Name);
        json.WriteString("verdict", Wording.Of(result.Verdict));
        Minutes(json, "endurance_minutes", result.Endurance);
        if (result.Kinetic is { } kinetic)
            Minutes(json, "endurance_minutes_kinetic", kinetic.Endurance);
        Minutes(json, "minutes_after_recognition", result.AfterRecognition);
        json.WriteString("limited_by", result.LimitedBy);
        WriteBreakOff(json, result.BreakOff);
        if (result.LandingReserve is { } reserve)
            Minutes(json, "latest_approach_minutes", reserve.Latest);
        WriteArray(json, "requirements", result.Requirements, WriteRequirement);
        var isSolved = result.Run.HasBegun; // numbers of a network that was never solved are none
        WriteArray(json, "buses", isSolved ? result.Run.Buses : [], WriteBus);
        WriteArray(json, "loads", result.Run.Loads, WriteLoad);
        WriteArray(json, "batteries", isSolved ? result.Run.Batteries : [], WriteBattery);
        WriteArray(json, "feeds", isSolved ? result.Run.Feeds : [], WriteFeed);
        WriteArray(json, "events", result.Run.Events, WriteEvent);
        WriteArray(json, "findings", result.Findings, WriteFinding);
        WriteArray(json, "assumptions", result.Assumptions, WriteAssumption);
    }

    private static void WriteRequirement(Utf8JsonWriter json, RequirementResult result)
    {
        Minutes(json, "endure_minutes", result.Requirement.Endure);
        Minutes(json, "endurance_minutes", result.Endurance);
        json.WriteString("verdict", Wording.Of(result.Verdict));
        json.WriteString("limited_by", result.LimitedBy);
    }

    private static void WriteBus(Utf8JsonWriter json, BusOutcome bus)
    {
        json.WriteString("name", bus.Name);
        Number(json, "cutoff_volts", bus.Cutoff?.Volts, VoltDecimals);
        Minutes(json, "minutes_to_cutoff", bus.TimeToCutoff);
        Minutes(json, "minutes_to_cutoff_for_good", bus.TimeToCutoffForGood);
        Number(json, "start_volts", bus.StartVoltage.Volts, VoltDecimals);
        Number(json, "lowest_volts", bus.LowestVoltage.Volts, VoltDecimals);
    }

    private static void WriteLoad(Utf8JsonWriter json, LoadOutcome load)
    {
        json.WriteString("name", load.Name);
        Minutes(json, "minutes_powered", load.TimePowered);
        Minutes(json, "minutes_lost_for_good", load.TimeLostForGood);
        json.WriteString("lost_because", load.LostBecause is { } reason ? Wording.Of(reason) : null);
    }

    private static void WriteBattery(Utf8JsonWriter json, BatteryOutcome battery)
    {
        json.WriteString("name", battery.Name);
        Number(json, "charge_end", battery.ChargeEnd, ChargeDecimals);
        Number(json, "delivered_amp_hours", battery.Delivered.AmpereHours, ChargeDecimals);
        Number(json, "delivered_watt_hours", battery.DeliveredEnergy.WattHours, ChargeDecimals);
        Minutes(json, "minutes_to_exhaustion", battery.TimeToExhaustion);
        Number(json, "start_amps", battery.StartCurrent.Amperes, AmpereDecimals);
    }

    private static void WriteFeed(Utf8JsonWriter json, FeedOutcome feed)
    {
        json.WriteString("name", feed.Name);
        Number(json, "start_amps", feed.StartCurrent.Amperes, AmpereDecimals);
        Number(json, "highest_amps", feed.HighestCurrent.Amperes, AmpereDecimals);
        Number(json, "lowest_amps", feed.LowestCurrent.Amperes, AmpereDecimals);
        Number(json, "highest_diode_watts", feed.HighestDiodePower?.Watts, WattDecimals);
        Number(json, "highest_junction_degc", feed.HighestJunction?.Celsius, TemperatureDecimals);
        Number(json, "reverse_amp_hours", feed.ReverseCharge.AmpereHours, ChargeDecimals);
    }

    private static void WriteEvent(Utf8JsonWriter json, TimedEvent happened)
    {
        Minutes(json, "minutes", happened.Time);
        json.WriteString("what", happened.What);
    }

    private static void WriteAssumption(Utf8JsonWriter json, Assumption assumption)
    {
        json.WriteString("part", assumption.Part);
        json.WriteString("text", assumption.Text);
        json.WriteString("origin", Wording.Of(assumption.Origin));
        json.WriteString("source", assumption.Source);
    }
}
