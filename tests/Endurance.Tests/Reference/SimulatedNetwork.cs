using Endurance.Quantities;
using Endurance.Simulation;
using Endurance.Yaml;

namespace Endurance.Tests.Reference;

/// <summary>How a network that a general-purpose circuit simulator has solved as well is run and compared.</summary>
/// <remarks>
/// The simulator is ngspice 39. Each deck was written from the laws alone: charge, wells, polarisation and heat as capacitors of behavioural
/// sources, tables by pwl(), junctions by its own diode; Gear's method. What happens at an instant was found as the crossing of a run without
/// it and switched, in a ramp of 1 ms, in the next. Longest step and relative tolerance went from 4 s and 1e-6 to 0.5 s and 1e-9; between the
/// last two settings no minute moved by more than 3e-5 and no charge by more than 1e-6 unless the test says otherwise.
/// </remarks>
internal static class SimulatedNetwork
{
    /// <summary>How far a minute may lie off; the largest difference seen is 1.1e-4.</summary>
    public const double Minutes = 3e-4;

    public const double AmpereHours = 1e-5;

    public const double Volts = 1e-5;

    public const double Amperes = 1e-5;

    /// <summary>Of a state of charge from 0 to 1.</summary>
    public const double Charge = 1e-6;

    /// <summary>Runs the one case of a scenario, up to a minute where one is given.</summary>
    public static SimulationResult Run(string text, double? minutes = null)
    {
        var scenario = ScenarioReader.ReadText("network.yaml", text).Scenario!;
        var horizon = minutes is { } value ? Duration.FromMinutes(value) : scenario.Horizon;
        return (scenario with { Horizon = horizon }).Run(scenario.FailureCases[0]);
    }

    /// <summary>Minute of the first event told in these words, or of a later one after so many of them.</summary>
    public static double MinuteOf(this SimulationResult run, string what, int before = 0) =>
        run.Events.Where(told => told.What.StartsWith(what, StringComparison.Ordinal)).ElementAt(before).Time.Minutes;

    public static double Lost(this SimulationResult run, string load) => run.Load(load).TimePowered.Minutes();

    public static double Exhausted(this SimulationResult run, string battery) => run.Battery(battery).TimeToExhaustion.Minutes();

    public static double BelowCutoff(this SimulationResult run, string bus) => run.Bus(bus).TimeToCutoff.Minutes();

    public static double Delivered(this SimulationResult run, string battery) => run.Battery(battery).Delivered.AmpereHours;

    public static double Received(this SimulationResult run, string battery) => run.Battery(battery).Received.AmpereHours;
}
