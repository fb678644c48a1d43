namespace Endurance.Tests.Reference;

/// <summary>Diodes, controllers, ground points and breakers over whole cases, beside what ngspice 39 solves; see <see cref="SimulatedNetwork"/>.</summary>
[Trait("Kind", "Validation")]
public sealed class SimulatedPaths
{
    /// <summary>Converged at 0.5 s and 1e-9, the minute of exhaustion to 5e-6. The backup battery gives from minute 81.5.</summary>
    [Fact]
    public void Backup_BehindAController_TakesOverAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Main battery behind a Schottky diode, backup behind a controller
            system: 14 V
            batteries:
              main_battery:
                bus: main_battery_bus
                capacity: 12 Ah
                rate: 1 h
                peukert: 1.04
                resistance: 14 mohm
                emf: [[0 %, 11.0 V], [8 %, 12.6 V], [20 %, 13.0 V], [70 %, 13.2 V], [100 %, 13.5 V]]
              backup_battery:
                bus: backup_bus
                capacity: 7.5 Ah
                rate: 20 h
                peukert: 1.18
                charge: 97 %
                resistance: [[0 %, 70 mohm], [25 %, 40 mohm], [100 %, 28 mohm]]
                emf: [[0 %, 11.0 V], [20 %, 11.8 V], [60 %, 12.2 V], [100 %, 12.6 V]]
            buses:
              main_battery_bus: {}
              backup_bus: {}
              essential_bus: {cutoff: 11.2 V}
            feeds:
              main_feed:
                from: main_battery_bus
                to: essential_bus
                wire: {resistance: 4 mohm}
                diode: {kind: schottky, saturation_current: 30 uA, ideality: 1.05, series_resistance: 7 mohm, temperature: 27 degC}
              backup_feed:
                from: backup_bus
                to: essential_bus
                wire: {resistance: 9 mohm}
                diode: {kind: ideal_controller, on_resistance: 6 mohm, regulated_drop: 20 mV}
            loads:
              efis: {bus: essential_bus, power: 42 W, minimum: 10.8 V}
              radios: {bus: essential_bus, current: 2.2 A, minimum: 9 V}
              panel_lights: {bus: essential_bus, resistance: 16 ohm, minimum: 5 V}
            failure_cases:
              discharge: {timeline: []}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(13.011406, run.Bus("essential_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(6.24115, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.352798, SimulatedNetwork.Run(Text, 140).Battery("backup_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(151.96391, run.BelowCutoff("essential_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(158.12264, run.Lost("efis"), SimulatedNetwork.Minutes);
        Assert.Equal(163.02035, run.Exhausted("backup_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(164.44406, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(12.401285, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(4.692674, run.Delivered("backup_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9.</summary>
    [Fact]
    public void GroundPoints_SharedByLoads_LoseThemAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Two ground points lift the loads that share them
            system: 14 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 20 Ah
                rate: 5 h
                peukert: 1.16
                resistance: [[0 %, 35 mohm], [25 %, 16 mohm], [100 %, 10 mohm]]
                emf: [[0 %, 10.8 V], [10 %, 11.7 V], [50 %, 12.3 V], [100 %, 12.9 V]]
            buses:
              battery_bus: {}
              main_bus: {cutoff: 10.9 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 4 mohm}}
            grounds:
              panel_block: {resistance: 45 mohm}
              firewall_block: {resistance: 20 mohm}
            loads:
              displays: {bus: main_bus, power: 55 W, minimum: 10.6 V, wire: {resistance: 20 mohm}, return: {to: panel_block, resistance: 10 mohm}}
              radios: {bus: main_bus, current: 2.5 A, minimum: 10.2 V, wire: {resistance: 30 mohm}, return: {to: panel_block, resistance: 15 mohm}}
              panel_lights: {bus: main_bus, resistance: 9 ohm, minimum: 10.0 V, return: {to: panel_block, resistance: 5 mohm}}
              ignition:
                bus: main_bus
                current: 3.2 A
                minimum: 10.4 V
                wire: {resistance: 25 mohm}
                return: {to: firewall_block, resistance: 8 mohm}
              pump: {bus: main_bus, power: 48 W, minimum: 10.9 V, wire: {resistance: 40 mohm}, return: {to: firewall_block, resistance: 12 mohm}}
            failure_cases:
              discharge: {timeline: [{at: 25 min, shed: [panel_lights]}, {at: 40 min, connect: [panel_lights]}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(12.683339, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(15.475754, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(53.90159, run.Lost("pump"), SimulatedNetwork.Minutes);
        Assert.Equal(58.25732, run.Lost("displays"), SimulatedNetwork.Minutes);
        Assert.Equal(65.35107, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(70.92873, run.Lost("ignition"), SimulatedNetwork.Minutes);
        Assert.Equal(72.21694, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(16.329426, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9; T = 35 degC + watts x heat path, Is(T) with k = 8.617333e-5 eV/K. The junctions reach 90.767 and 77.061 degC.</summary>
    [Fact]
    public void Diodes_ThatFollowTheirOwnHeat_LastAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Diodes that follow their own heat
            system: 14 V
            ambient: 35 degC
            batteries:
              main_battery:
                bus: main_battery_bus
                capacity: 22 Ah
                rate: 1 h
                peukert: 1.08
                resistance: 9 mohm
                emf: [[0 %, 11.0 V], [15 %, 12.0 V], [60 %, 12.5 V], [100 %, 12.9 V]]
              backup_battery:
                bus: backup_bus
                capacity: 9 Ah
                rate: 20 h
                peukert: 1.2
                resistance: 24 mohm
                emf: [[0 %, 10.9 V], [30 %, 11.9 V], [100 %, 12.7 V]]
            buses:
              main_battery_bus: {}
              backup_bus: {}
              essential_bus: {cutoff: 10.9 V}
            feeds:
              main_feed:
                from: main_battery_bus
                to: essential_bus
                wire: {resistance: 4 mohm}
                diode: {kind: schottky, saturation_current: 8 uA, ideality: 1.08, series_resistance: 8 mohm, heat_path: 9 K/W}
              backup_feed:
                from: backup_bus
                to: essential_bus
                wire: {resistance: 10 mohm}
                diode:
                  kind: silicon
                  saturation_current: 0.002 uA
                  ideality: 1.8
                  series_resistance: 12 mohm
                  heat_path: 6 K/W
                  energy_gap: 1.11 eV
                  xti: 3
            loads:
              displays: {bus: essential_bus, power: 85 W, minimum: 10.6 V}
              radios: {bus: essential_bus, current: 4 A, minimum: 9 V}
              lights: {bus: essential_bus, resistance: 4 ohm, minimum: 5 V}
            failure_cases:
              discharge: {timeline: [{at: 20 min, shed: [lights]}, {at: 45 min, connect: [lights], lasts: 8 min}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(12.277631, run.Bus("essential_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(13.992541, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(124.95974, run.BelowCutoff("essential_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(137.04173, run.Lost("displays"), SimulatedNetwork.Minutes);
        Assert.Equal(147.02009, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(166.99798, run.Exhausted("backup_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(23.369525, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(5.85531, run.Delivered("backup_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(90.767, run.Feed("main_feed").HighestJunction!.Value.Celsius, 0.001);
        Assert.Equal(77.061, run.Feed("backup_feed").HighestJunction!.Value.Celsius, 0.001);
    }

    /// <summary>Converged at 0.5 s and 1e-9. It starts at 1, and trips only as the watts ask more amperes of a lower bus.</summary>
    [Fact]
    public void Breaker_WarmingAsTheBusSags_OpensAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: A breaker that warms as the bus sags
            system: 14 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 20 Ah
                rate: 2 h
                peukert: 1.12
                resistance: [[0 %, 30 mohm], [30 %, 15 mohm], [100 %, 10 mohm]]
                emf: [[0 %, 10.6 V], [20 %, 11.8 V], [60 %, 12.3 V], [100 %, 12.8 V]]
            buses:
              battery_bus: {}
              main_bus: {cutoff: 10.4 V}
              inverter_bus: {}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 5 mohm}}
              inverter_feed:
                from: main_bus
                to: inverter_bus
                wire: {resistance: 12 mohm}
                breaker: {rated: 7.5 A, resistance: 8 mohm, factor: 1.25, time_constant: 180 s}
            loads:
              inverter: {bus: inverter_bus, power: 108 W, minimum: 9 V}
              radios: {bus: main_bus, current: 4 A, minimum: 9 V}
              pump: {bus: main_bus, power: 60 W, minimum: 9.5 V, state: off}
            failure_cases:
              discharge: {timeline: [{at: 10 min, connect: [pump], lasts: 4 min}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(12.684433, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(60.42288, run.MinuteOf("inverter_feed breaker opened"), SimulatedNetwork.Minutes);
        Assert.Equal(60.42288, run.Lost("inverter"), SimulatedNetwork.Minutes);
        Assert.Equal(161.80763, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(20.219995, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }
}
