namespace Endurance.Tests.Reference;

/// <summary>Converters, alternators at their limit and chargers over whole cases, beside what ngspice 39 solves; see <see cref="SimulatedNetwork"/>.</summary>
[Trait("Kind", "Validation")]
public sealed class SimulatedSupplies
{
    /// <summary>Converged at 1 s and 1e-9. The heater holds the converter at its 6 A from minute 20 to 35.</summary>
    [Fact]
    public void Converter_AtItsLimitForAWhile_StopsAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Converter behind a 28 V battery
            system: 28 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 20 Ah
                rate: 10 h
                peukert: 1.18
                resistance: [[0 %, 60 mohm], [30 %, 30 mohm], [100 %, 20 mohm]]
                emf: [[0 %, 20.4 V], [10 %, 23.4 V], [40 %, 24.6 V], [100 %, 25.8 V]]
                charge: 95 %
                health: 90 %
            buses:
              battery_bus: {}
              main_bus: {cutoff: 22.5 V}
              converter_bus: {}
              avionics_bus: {cutoff: 11.0 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 5 mohm}}
              avionics_feed: {from: converter_bus, to: avionics_bus, wire: {resistance: 15 mohm}}
            converters:
              converter:
                from: main_bus
                to: converter_bus
                output: 13.8 V
                limit: 6 A
                droop: 40 mohm
                efficiency: 88 %
                cut_in: 23.0 V
                cut_out: 21.0 V
            loads:
              gyros: {bus: main_bus, current: 3 A, minimum: 18 V}
              heat: {bus: main_bus, resistance: 8 ohm}
              pump: {bus: main_bus, power: 50 W, minimum: 20 V}
              radio: {bus: avionics_bus, current: 1.5 A, minimum: 10 V}
              display: {bus: avionics_bus, power: 20 W, minimum: 10.5 V}
              seat_heater: {bus: avionics_bus, resistance: 4.2 ohm, state: off}
            failure_cases:
              discharge:
                timeline:
                  - {at: 20 min, connect: [seat_heater], lasts: 15 min}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(13.636836, run.Bus("avionics_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(9.958284, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.177751, SimulatedNetwork.Run(Text, 60).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(67.13936, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(70.96785, run.MinuteOf("converter stops"), SimulatedNetwork.Minutes);
        Assert.Equal(70.96785, run.BelowCutoff("avionics_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(74.83979, run.Lost("pump"), SimulatedNetwork.Minutes);
        Assert.Equal(75.47576, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(12.756753, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9. The alternator leaves its 21 A at minute 39.0, what the battery accepts binds from 55.5.</summary>
    [Fact]
    public void LowBattery_RechargedAtBothLimits_LastsAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Alternator at its limit recharges a low battery
            system: 14 V
            horizon: 5 h
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 18 Ah
                rate: 20 h
                peukert: 1.2
                resistance: 190 mohm
                emf: [[0 %, 11.2 V], [20 %, 12.0 V], [60 %, 12.5 V], [100 %, 12.9 V]]
                charge: 50 %
                charge_efficiency: 90 %
                charge_acceptance: 2 /h
            alternators:
              alternator: {bus: main_bus, setpoint: 14.2 V, rated: 21 A, droop: 10 mohm, driven_by: engine}
            buses:
              battery_bus: {}
              main_bus: {cutoff: 10.0 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 6 mohm}}
            loads:
              radios: {bus: main_bus, current: 5 A, minimum: 8 V}
              displays: {bus: main_bus, power: 45 W, minimum: 10.4 V}
              pitot_heat: {bus: main_bus, resistance: 2.4 ohm, minimum: 8 V}
            failure_cases:
              failure:
                timeline:
                  - {at: 75 min, fail: [alternator], shed: [pitot_heat]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(13.746743, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(-6.998688, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.674508, SimulatedNetwork.Run(Text, 30).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(0.899285, SimulatedNetwork.Run(Text, 75).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(7.985693, run.Received("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(113.13449, run.Lost("displays"), SimulatedNetwork.Minutes);
        Assert.Equal(171.76127, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(10.730025, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9. The backup battery turns from taking to giving between minutes 71 and 80.</summary>
    [Fact]
    public void ChargedBackup_CutOutOfItsCharger_LastsAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Charger of a backup battery until its input falls
            system: 14 V
            batteries:
              main_battery:
                bus: main_battery_bus
                capacity: 16 Ah
                rate: 20 h
                peukert: 1.17
                resistance: 13 mohm
                charge: 90 %
                charge_efficiency: 95 %
                charge_acceptance: 0.8 /h
                emf: [[0 %, 11.0 V], [15 %, 11.9 V], [55 %, 12.4 V], [100 %, 12.9 V]]
              backup_battery:
                bus: backup_bus
                capacity: 7 Ah
                rate: 20 h
                peukert: 1.2
                resistance: 30 mohm
                charge: 45 %
                charge_efficiency: 86 %
                emf: [[0 %, 10.8 V], [30 %, 11.8 V], [100 %, 12.8 V]]
            alternators:
              alternator: {bus: main_bus, setpoint: 14.1 V, rated: 18 A, droop: 20 mohm, driven_by: engine}
            buses:
              main_battery_bus: {}
              main_bus: {cutoff: 11.5 V}
              charge_bus: {}
              backup_bus: {}
              ignition_bus: {cutoff: 10.5 V}
            chargers:
              backup_charger:
                from: main_bus
                to: charge_bus
                output: 13.6 V
                limit: 2.4 A
                efficiency: 85 %
                droop: 80 mohm
                cut_in: 13.0 V
                cut_out: 12.2 V
            feeds:
              master: {from: main_battery_bus, to: main_bus, wire: {resistance: 5 mohm}}
              charge_wire: {from: charge_bus, to: backup_bus, wire: {resistance: 350 mohm}}
              ignition_main:
                from: main_bus
                to: ignition_bus
                wire: {resistance: 10 mohm}
                diode: {kind: schottky, saturation_current: 15 uA, ideality: 1.05, series_resistance: 9 mohm, temperature: 27 degC}
              ignition_backup:
                from: backup_bus
                to: ignition_bus
                wire: {resistance: 15 mohm}
                diode: {kind: schottky, saturation_current: 15 uA, ideality: 1.05, series_resistance: 9 mohm, temperature: 27 degC}
            loads:
              ignition: {bus: ignition_bus, current: 3.4 A, minimum: 8 V}
              displays: {bus: main_bus, power: 70 W, minimum: 10.8 V}
              heat: {bus: main_bus, resistance: 5 ohm, minimum: 10.5 V}
            failure_cases:
              failure: {timeline: [{at: 70 min, fail: [alternator]}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(90.55681, run.MinuteOf("backup_charger stops"), SimulatedNetwork.Minutes);
        Assert.Equal(124.18134, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(132.37962, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(149.29505, run.BelowCutoff("ignition_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(154.43369, run.Exhausted("backup_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(0.99027, run.Received("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(2.890594, run.Received("backup_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(10.018966, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(3.640771, run.Delivered("backup_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(0.009091, SimulatedNetwork.Run(Text, 80).Delivered("backup_battery"), SimulatedNetwork.AmpereHours);
    }
}
