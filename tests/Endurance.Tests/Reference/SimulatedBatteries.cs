namespace Endurance.Tests.Reference;

/// <summary>Battery models over whole cases, beside what ngspice 39 solves; see <see cref="SimulatedNetwork"/>.</summary>
[Trait("Kind", "Validation")]
public sealed class SimulatedBatteries
{
    /// <summary>Converged at 0.5 s and 1e-9, the minute of exhaustion to 3e-7.</summary>
    [Fact]
    public void PolarisationPairs_UnderSwitchedLoads_LastAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Polarisation pairs under switched loads
            system: 14 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 24 Ah
                rate: 1 h
                peukert: 1.1
                resistance: 11 mohm
                emf: [[0 %, 10.9 V], [15 %, 11.9 V], [50 %, 12.35 V], [100 %, 12.9 V]]
                charge: 88 %
                charge_efficiency: 92 %
                polarisation: [{resistance: 8 mohm, time: 45 s}, {resistance: 14 mohm, time: 15 min}]
            alternators:
              alternator: {bus: main_bus, setpoint: 13.9 V, rated: 35 A, droop: 12 mohm, driven_by: engine}
            buses:
              battery_bus: {}
              main_bus: {cutoff: 11.2 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 5 mohm}}
            loads:
              radios: {bus: main_bus, current: 6 A, minimum: 9 V}
              displays: {bus: main_bus, power: 60 W, minimum: 10 V}
              landing_light: {bus: main_bus, resistance: 1.6 ohm, minimum: 8 V}
              pump: {bus: main_bus, power: 110 W, minimum: 10 V, state: off}
            failure_cases:
              failure:
                timeline:
                  - {at: 0 min, fail: [alternator]}
                  - {at: 12 min, shed: [landing_light]}
                  - {at: 24 min, connect: [pump], lasts: 9 min}
                  - {at: 40 min, restore: [alternator]}
                  - {at: 52 min, fail: [alternator]}
                  - {at: 65 min, connect: [landing_light], lasts: 6 min}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(12.470314, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(0.611986, SimulatedNetwork.Run(Text, 52).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(117.93417, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(132.5862, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(4.87225, run.Received("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(26.008195, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9; lifetimes 20, 4.245885, 1.142562 and 0.366667 h from 0.8, 3.2, 9 and 20 A, solved apart.</summary>
    [Fact]
    public void DataSheetPoints_UnderSwitchedLoads_LastAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Lifetimes from a data sheet
            system: 14 V
            batteries:
              main_battery:
                bus: battery_bus
                charge: 94 %
                health: 85 %
                charge_efficiency: 92 %
                resistance: [[0 %, 50 mohm], [20 %, 28 mohm], [100 %, 20 mohm]]
                emf: [[0 %, 10.6 V], [25 %, 11.9 V], [100 %, 12.8 V]]
                discharge_points:
                  - {current: 0.8 A, lasts: 20 h, to: 10.5 V}
                  - {current: 3.2 A, lasts: 4.2 h, to: 10.5 V}
                  - {current: 9 A, lasts: 68 min, to: 10.2 V}
                  - {current: 20 A, lasts: 22 min, to: 9.6 V}
            alternators:
              alternator: {bus: main_bus, setpoint: 13.4 V, rated: 9 A, droop: 20 mohm, driven_by: engine}
            buses:
              battery_bus: {}
              main_bus: {cutoff: 10.8 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 6 mohm}}
            loads:
              radios: {bus: main_bus, current: 2.2 A, minimum: 9 V}
              displays: {bus: main_bus, power: 38 W, minimum: 10 V}
              heat: {bus: main_bus, resistance: 2.2 ohm, minimum: 8 V}
            failure_cases:
              failure:
                timeline: [{at: 30 min, fail: [alternator]}, {at: 36 min, shed: [heat]}, {at: 60 min, shed: [displays]}, {at: 90 min, connect: [displays]}]
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(1.959582, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.860407, SimulatedNetwork.Run(Text, 30).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(0.514475, SimulatedNetwork.Run(Text, 60).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(0.423345, SimulatedNetwork.Run(Text, 90).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(126.47411, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(135.54387, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(9.503002, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9, the later minutes to 4e-6. The low battery takes 8.4 A from the pack at first.</summary>
    [Fact]
    public void PackWithProtection_TiedToALowBattery_OpensAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Two batteries tied, one low, a lithium pack that opens and closes
            system: 14 V
            batteries:
              ship_battery:
                bus: ship_bus
                capacity: 18 Ah
                rate: 10 h
                peukert: 1.15
                charge: 35 %
                charge_efficiency: 90 %
                resistance: 20 mohm
                emf: [[0 %, 11.0 V], [20 %, 11.9 V], [60 %, 12.4 V], [100 %, 12.9 V]]
              pack:
                bus: pack_bus
                capacity: 10 Ah
                rate: 1 h
                peukert: 1.05
                resistance: [[0 %, 40 mohm], [20 %, 22 mohm], [100 %, 18 mohm]]
                emf: [[0 %, 10.0 V], [10 %, 12.2 V], [30 %, 12.8 V], [80 %, 13.0 V], [100 %, 13.4 V]]
                protection: {opens_below: 11.4 V}
            buses:
              ship_bus: {}
              pack_bus: {}
              main_bus: {cutoff: 10.9 V}
            feeds:
              ship_feed: {from: ship_bus, to: main_bus, wire: {resistance: 30 mohm}}
              pack_feed: {from: pack_bus, to: main_bus, wire: {resistance: 45 mohm}}
            loads:
              radios: {bus: main_bus, current: 2.5 A, minimum: 9 V}
              displays: {bus: main_bus, power: 40 W, minimum: 10.2 V}
              heat: {bus: main_bus, resistance: 2 ohm, minimum: 9 V, state: off}
            failure_cases:
              discharge: {timeline: [{at: 20 min, connect: [heat], lasts: 6 min}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(-8.438512, run.Battery("ship_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(14.136101, run.Battery("pack").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.432562, SimulatedNetwork.Run(Text, 30).Battery("ship_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(0.469144, SimulatedNetwork.Run(Text, 30).Battery("pack").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(117.95178, run.MinuteOf("pack opened"), SimulatedNetwork.Minutes);
        Assert.Equal(131.68182, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(138.37851, run.Exhausted("ship_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(2.392549, run.Received("ship_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(7.061769, run.Delivered("ship_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(9.478498, run.Delivered("pack"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9. The pack takes 11 A at first, as much as it accepts, of two alternators on one bus; one fails at minute 20, the other at 70.</summary>
    [Fact]
    public void PackOnTwoAlternators_FailingInTurn_OpensAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Two alternators, idle, a pack that takes and opens
            system: 14 V
            batteries:
              pack:
                bus: pack_bus
                capacity: 20 Ah
                rate: 1 h
                peukert: 1.04
                charge: 45 %
                charge_efficiency: 97 %
                charge_acceptance: 1 /h
                resistance: [[0 %, 30 mohm], [15 %, 16 mohm], [100 %, 12 mohm]]
                emf: [[0 %, 10.4 V], [10 %, 12.4 V], [30 %, 12.9 V], [90 %, 13.25 V], [100 %, 13.6 V]]
                polarisation: [{resistance: 10 mohm, time: 90 s}]
                protection: {opens_below: 11.0 V, recloses_above: 12.6 V}
            alternators:
              belt_alternator: {bus: main_bus, setpoint: 14.3 V, rated: 26 A, limit_idle: 9 A, droop: 25 mohm, driven_by: engine}
              pad_alternator: {bus: main_bus, setpoint: 13.9 V, rated: 10 A, droop: 40 mohm}
            buses:
              pack_bus: {}
              main_bus: {cutoff: 11.6 V}
            feeds:
              master: {from: pack_bus, to: main_bus, wire: {resistance: 8 mohm}}
            loads:
              radios: {bus: main_bus, current: 7 A, minimum: 9 V}
              displays: {bus: main_bus, power: 90 W, minimum: 10.2 V}
              heat: {bus: main_bus, resistance: 1.5 ohm, minimum: 8 V}
            failure_cases:
              failure:
                timeline:
                  - {at: 20 min, fail: [belt_alternator]}
                  - {at: 60 min, shed: [heat]}
                  - {at: 70 min, fail: [pad_alternator]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(13.592680, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(-11, run.Battery("pack").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.587691, SimulatedNetwork.Run(Text, 20).Battery("pack").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(0.177592, SimulatedNetwork.Run(Text, 60).Battery("pack").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(74.61195, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(77.25083, run.MinuteOf("pack opened"), SimulatedNetwork.Minutes);
        Assert.Equal(3.185686, run.Received("pack"), SimulatedNetwork.AmpereHours);
        Assert.Equal(10.845729, run.Delivered("pack"), SimulatedNetwork.AmpereHours);
    }
}
