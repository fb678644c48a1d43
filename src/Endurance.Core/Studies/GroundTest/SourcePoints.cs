using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Studies.GroundTest;

/// <summary>Each source alone, and the warnings that tell of its loss.</summary>
internal static class SourcePoints
{
    private const string Clear = "Engine running: chocks, brakes held, nobody forward of the wing; read the meters from the cabin.";

    /// <summary>Per hour; any value will do, since the limit is also in proportion to the charge that is missing.</summary>
    private const double Acceptance = 1;

    public static TestPoint Rest(Scenario scenario, Battery battery)
    {
        var setup = TestSetup.EngineStopped(scenario).WithBatteries(battery.Name).WithFeeds().WithLoads();
        var rest = setup.Measure().Of(ReadingKind.BusVolts, battery.Bus);
        var shorted = battery.Cells is { } cells ? FormattableString.Invariant($"About {rest.Predicted / cells:0.0} V low: a shorted cell; a") : "A";
        return PointMaker.Make(
            TestGroup.RestVoltage,
            $"{battery.Name} at rest",
            [battery.Name],
            setup,
            [rest],
            FormattableString.Invariant($"At {battery.InitialCharge * 100:0} % charge, after hours of rest. {shorted} little low: charge it first, or type the charge it has."));
    }

    public static TestPoint Alone(Scenario scenario, Battery battery)
    {
        string[] on = [.. scenario.Loads.Where(load => load.IsOn && !PointMaker.IsShort(scenario, load.Name)).Select(load => load.Name)];
        var setup = TestSetup.EngineStopped(scenario).WithBatteries(battery.Name).WithLoads(on).Say("Contacts as drawn.");
        var readings = setup.Measure();
        var dead = readings.Dead();
        return PointMaker.Make(
            TestGroup.SourceAlone,
            $"{battery.Name} alone carries what it reaches",
            [battery.Name],
            setup,
            readings.Everything(),
            dead.IsEmpty ? [] : [$"It does not reach or hold: {string.Join(", ", dead)}."]);
    }

    public static TestPoint Running(Scenario scenario, Alternator alternator)
    {
        var alone = scenario with
        {
            Alternators = [.. scenario.Alternators.Select(other => Is(other.Name, alternator.Name) ? other with { IsOn = true } : other with { IsOn = false })],
        };
        var setup = new TestSetup(alone, [], [$"Engine running; {alternator.Name} on, every other alternator off.", "Batteries connected, contacts and loads as drawn."]);
        return PointMaker.Make(
            TestGroup.EngineRunning,
            $"{alternator.Name} alone",
            [alternator.Name],
            setup,
            [ChargesNothing(setup).Measure().Of(ReadingKind.BusVolts, alternator.Bus)],
            Clear,
            "An alternator never runs without a battery. Predicted for full batteries: read it when they take no more charge.") with { Setup = null };
    }

    public static TestPoint Running(Scenario scenario, Charger charger)
    {
        var on = scenario with { Chargers = [.. scenario.Chargers.Select(other => Is(other.Name, charger.Name) ? other with { IsOn = true } : other)] };
        var setup = new TestSetup(on, [], [$"Engine running; alternators as drawn, {charger.Name} on.", "Batteries connected, contacts and loads as drawn."]);
        var readings = ChargesNothing(setup).Measure();
        return PointMaker.Make(
            TestGroup.EngineRunning,
            $"{charger.Name} gives into {charger.To}",
            [charger.Name],
            setup,
            [readings.Of(ReadingKind.BusVolts, charger.From), readings.Of(ReadingKind.BusVolts, charger.To)],
            Clear,
            $"Predicted for full batteries; the volts of {charger.To} must rise when {charger.Name} is switched on.") with { Setup = null };
    }

    public static TestPoint Warns(Scenario scenario, LowVoltageWarning warning)
    {
        var setup = TestSetup.EngineStopped(scenario).WithBatteries().WithFeeds().WithLoads()
            .Say(FormattableString.Invariant($"Adjustable bench supply on {warning.Senses}, lowered slowly from {Tolerances.SupplyVolts(scenario, warning.Senses) + 1:0.0} V."));
        return PointMaker.Make(
            TestGroup.Warning,
            $"{warning.Name} comes on when {warning.Senses} falls",
            [warning.Name],
            setup,
            [new ExpectedReading(warning.Senses, ReadingKind.BusVolts, warning.Below.Volts, Tolerances.Volts(scenario, warning.Senses))],
            FormattableString.Invariant($"Write down the volts at which it comes on; below them for {warning.For.Seconds:0.#} s.")) with { Setup = null };
    }

    /// <summary>Every battery full, so that none takes charge.</summary>
    private static TestSetup ChargesNothing(TestSetup setup) => setup with
    {
        Scenario = setup.Scenario with
        {
            Batteries = [.. setup.Scenario.Batteries.Select(battery => battery with { InitialCharge = 1, ChargeAcceptancePerHour = Acceptance })],
        },
    };

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
