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

    /// <summary>Volts either way of a bus that is fed: 0.2 V in a 14 V system, twice that in a 28 V one.</summary>
    public static double Volts(Scenario scenario) => 0.2 * scenario.BatteriesInSeries;

    /// <summary>Volts that may stand on a bus that nothing feeds.</summary>
    public static double DeadVolts(Scenario scenario) => 0.5 * scenario.BatteriesInSeries;

    /// <summary>Battery volts at which a timed discharge ends.</summary>
    public static double StopVolts(Scenario scenario) => 11 * scenario.BatteriesInSeries;

    public static double SupplyVolts(Scenario scenario) => 12.6 * scenario.BatteriesInSeries;

    public static double Amperes(double predicted) => Math.Max(LeastCurrent, Math.Abs(predicted) * CurrentFraction);

    /// <summary>Stands for a load where a bus has none, so that a stray leakage cannot lift it.</summary>
    public static Resistance TestResistor(Scenario scenario) =>
        Resistance.FromOhms(Math.Round(scenario.NominalVoltage.Volts * scenario.NominalVoltage.Volts / LampWatts, 1));
}
