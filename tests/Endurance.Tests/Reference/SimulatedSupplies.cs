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

    /// <summary>Converged at 0.5 s and 1e-9. The converter's input counts on the sagging bus as watts; the master's coil lets go at 21 V, and the clock alone goes on.</summary>
    [Fact]
    public void ConvertersInARow_UntilTheMasterLetsGo_LastAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Converters in a row, and a master that lets go
            system: 28 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 16 Ah
                rate: 2 h
                peukert: 1.13
                resistance: [[0 %, 120 mohm], [25 %, 55 mohm], [100 %, 35 mohm]]
                emf: [[0 %, 20.6 V], [15 %, 23.2 V], [55 %, 24.5 V], [100 %, 25.7 V]]
                polarisation: [{resistance: 25 mohm, time: 3 min}]
            buses:
              battery_bus: {}
              main_bus: {cutoff: 21.6 V}
              avionics_bus: {cutoff: 11.5 V}
              five_volt_bus: {cutoff: 4.6 V}
            feeds:
              master:
                from: battery_bus
                to: main_bus
                contactor: {state: closed, coil: 26 ohm, contact: 2 mohm, pulls_in_above: 23.0 V, drops_out_below: 21.0 V}
                wire: {resistance: 6 mohm}
            converters:
              avionics_converter: {from: main_bus, to: avionics_bus, output: 14.0 V, limit: 9 A, droop: 60 mohm, efficiency: 87 %, cut_in: 20 V, cut_out: 18 V}
              five_volt_converter: {from: avionics_bus, to: five_volt_bus, output: 5.1 V, limit: 3 A, droop: 50 mohm, efficiency: 80 %, cut_in: 9 V, cut_out: 8 V}
            loads:
              radios: {bus: avionics_bus, current: 3 A, minimum: 10 V}
              displays: {bus: avionics_bus, power: 32 W, minimum: 10.5 V}
              tablets: {bus: five_volt_bus, power: 11 W, minimum: 4.5 V}
              cabin_light: {bus: avionics_bus, resistance: 6 ohm, minimum: 8 V, state: off}
              gyros: {bus: main_bus, current: 2.4 A, minimum: 18 V}
              heat: {bus: main_bus, resistance: 9 ohm, minimum: 17 V}
              clock: {bus: battery_bus, current: 0.3 A, minimum: 12 V}
            failure_cases:
              discharge: {timeline: [{at: 10 min, connect: [cabin_light], lasts: 12 min}, {at: 30 min, shed: [heat]}, {at: 42 min, connect: [heat]}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(13.618435, run.Bus("avionics_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(4.989775, run.Bus("five_volt_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(10.421875, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.641747, SimulatedNetwork.Run(Text, 30).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(78.73398, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(81.65862, run.MinuteOf("master contactor dropped out"), SimulatedNetwork.Minutes);
        Assert.Equal(81.65862, run.Lost("tablets"), SimulatedNetwork.Minutes);
        Assert.Equal(188.45251, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
    }
}
