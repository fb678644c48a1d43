using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Quantities;

namespace Endurance.Studies.GroundTest;

/// <summary>How near a reading has to come, and the aids of the test bench. All of it is common practice, no source.</summary>
internal static class Tolerances
{
    /// <summary>Amperes within this fraction of the prediction are right.</summary>
    public const double CurrentFraction = 0.1;

    /// <summary>Amperes; what a clamp meter can tell from nothing.</summary>
    public const double LeastCurrent = 0.2;

    /// <summary>Amperes above which a load is tested for seconds only.</summary>
    public const double ShortDraw = 50;

    /// <summary>A current this much above its prediction ends the point.</summary>
    public const double AbortFactor = 1.25;

    /// <summary>Charge below which a discharge on the ground wears a lead-acid battery for nothing.</summary>
    public const double LeastCharge = 0.2;

    private const double LampWatts = 24;

    /// <summary>Volts either way of a bus that is fed: 0.2 V on a 14 V bus, twice that on a 28 V one.</summary>
    public static double Volts(Scenario scenario, string bus) => 0.2 * Twelves(scenario, bus);

    /// <summary>Volts that may stand on a bus that nothing feeds.</summary>
    public static double DeadVolts(Scenario scenario, string bus) => 0.5 * Twelves(scenario, bus);

    /// <summary>Volts of a battery's bus at which a timed discharge ends.</summary>
    public static double StopVolts(Scenario scenario, string bus) => 11 * Twelves(scenario, bus);

    /// <summary>Volts of a bench supply in place of a battery.</summary>
    public static double SupplyVolts(Scenario scenario, string bus) => 12.6 * Twelves(scenario, bus);

    public static double Amperes(double predicted) => Math.Max(LeastCurrent, Math.Abs(predicted) * CurrentFraction);

    /// <summary>Stands for a load where a bus has none, so that a stray leakage cannot lift it.</summary>
    public static Resistance TestResistor(Scenario scenario, string bus)
    {
        var volts = Aircraft(scenario).Of(bus).Volts;
        return Resistance.FromOhms(Math.Round(volts * volts / LampWatts, 1));
    }

    /// <summary>Amperes of a load at the nominal voltage of its bus.</summary>
    public static double Draw(Scenario scenario, Load load) => load.CurrentAt(Aircraft(scenario).Of(load.Bus)).Amperes;

    /// <summary>12 V batteries in series that a battery of the bus counts for.</summary>
    private static double Twelves(Scenario scenario, string bus) => Aircraft(scenario).Fourteens(bus);

    /// <summary>Without what the bench adds.</summary>
    private static BusVoltages Aircraft(Scenario scenario) => new(scenario with
    {
        Alternators = [.. scenario.Alternators.Where(alternator => !string.Equals(alternator.Name, TestSetup.SupplyName, StringComparison.Ordinal))],
    });
}
