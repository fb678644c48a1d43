using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>Networks whose voltages are straight lines over time, so that every instant is known by hand.</summary>
internal static class Ramp
{
    /// <summary>10 Ah, k 1, 10 mohm, EMF 10 V to 13 V: under 10 A the bus reads 12.9 V less 0.05 V a minute, and is empty at 60 min.</summary>
    public static Scenario Falling(params Load[] loads) => Scenario(2) with
    {
        Buses = [Bus("bus")],
        Batteries = [FallingBattery],
        Loads = [.. loads],
    };

    public static Battery FallingBattery => Battery("battery", "bus", 10, 20, 1, Table((0, 10), (100, 13)), PiecewiseLinear.Constant(10));

    /// <summary>A battery too large to move, 10 mohm.</summary>
    public static Battery Steady(double volts, string name = "battery", string bus = "bus") =>
        Battery(name, bus, 1e5, 20, 1, Table((0, volts), (100, volts)), PiecewiseLinear.Constant(10));

    public static Scenario Standing(double volts, params Load[] loads) => Scenario(1) with
    {
        Buses = [Bus("bus")],
        Batteries = [Steady(volts)],
        Loads = [.. loads],
    };

    /// <summary>Nothing below ends the run early.</summary>
    public static Scenario For(this Scenario scenario, double minutes) => scenario with { Horizon = Duration.FromMinutes(minutes) };

    public static Load Restarting(this Load load, double volts, double startUpSeconds = 0) =>
        load with { Restart = Voltage.FromVolts(volts), StartUp = Duration.FromSeconds(startUpSeconds) };

    public static Load Off(this Load load) => load with { IsOn = false };
}
