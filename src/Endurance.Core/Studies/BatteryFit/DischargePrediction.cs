using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.BatteryFit;

/// <summary>Asks the simulator for a constant-current discharge of one battery.</summary>
internal static class DischargePrediction
{
    private const string Bus = "battery_bus";

    /// <summary>The run ends with the battery; the horizon only has to lie beyond that.</summary>
    private const double HorizonOverLifetime = 2;

    /// <summary>Time from full until the terminals are below a voltage, or the battery is exhausted.</summary>
    public static Duration TimeTo(Battery battery, Current drain, Voltage end)
    {
        var scenario = new Scenario
        {
            Title = battery.Name,
            System = battery.Emf.At(1) > SystemBoundary ? SystemVoltage.Volts28 : SystemVoltage.Volts14,
            Ambient = battery.Temperature,
            Horizon = battery.LifetimeAt(drain) * HorizonOverLifetime,
            Buses = [new Bus { Name = Bus, Cutoff = end }],
            Batteries = [battery with { Bus = Bus }],
            Loads = [new Load { Name = "drain", Bus = Bus, Demand = new ConstantCurrent(drain) }],
        };
        var run = new Simulator(scenario).Run(new FailureCase { Name = "discharge" }, new SimulationOptions());
        return run.Buses[0].TimeToCutoff ?? run.End;
    }

    /// <summary>Volts between a full 12 V and an empty 24 V battery; it sets the solver's hysteresis alone.</summary>
    private const double SystemBoundary = 17;
}
