namespace Endurance.Tests.Reference;

/// <summary>The two-well model over whole cases, beside what ngspice 39 solves; see <see cref="SimulatedNetwork"/>.</summary>
[Trait("Kind", "Validation")]
public sealed class SimulatedWells
{
    /// <summary>Converged at 0.5 s and 1e-9. Emptied, the available well fills to 5 % and on until the bus is at 11.4 V.</summary>
    [Fact]
    public void TwoWells_UnderStepsOfLoad_EmptyAndReviveAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Two wells under steps of load
            system: 14 V
            horizon: 2 h
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 18 Ah
                rate: 20 h
                peukert: 1.2
                resistance: [[0 %, 40 mohm], [30 %, 18 mohm], [100 %, 12 mohm]]
                emf: [[0 %, 10.9 V], [10 %, 11.7 V], [50 %, 12.2 V], [100 %, 12.8 V]]
                charge: 96 %
                health: 92 %
                charge_efficiency: 88 %
                capacity_model: kinetic
                kinetic: {available: 46 %, rate: 0.6 /h, capacity: 20 Ah}
            alternators:
              alternator: {bus: main_bus, setpoint: 13.8 V, rated: 20 A, droop: 15 mohm, driven_by: engine, state: off}
            buses:
              battery_bus: {}
              main_bus: {cutoff: 11.0 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 6 mohm}}
            loads:
              displays: {bus: main_bus, power: 65 W, minimum: 9 V}
              radios: {bus: main_bus, current: 3 A, minimum: 9 V, restart: 11.4 V}
              pitot_heat: {bus: main_bus, resistance: 1.2 ohm, minimum: 8 V}
              landing_light: {bus: main_bus, current: 8 A, minimum: 8 V, state: off}
            failure_cases:
              discharge:
                timeline:
                  - {at: 10 min, shed: [pitot_heat]}
                  - {at: 45 min, connect: [alternator]}
                  - {at: 55 min, shed: [alternator]}
                  - {at: 62 min, connect: [landing_light]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(12.411192, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(0.577372, SimulatedNetwork.Run(Text, 60).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(67.59198, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(70.78499, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(83.23195, run.MinuteOf("main_battery can supply again"), SimulatedNetwork.Minutes);
        Assert.Equal(86.60178, run.MinuteOf("radios powered again"), SimulatedNetwork.Minutes);
        Assert.Equal(101.23783, run.MinuteOf("main_bus below", before: 1), SimulatedNetwork.Minutes);
        Assert.Equal(113.58064, run.MinuteOf("main_battery exhausted", before: 1), SimulatedNetwork.Minutes);
        Assert.Equal(11.515839, SimulatedNetwork.Run(Text, 80).Delivered("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(12.864783, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(1.946303, run.Received("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9. The available well is full from minute 21.84703, and passes on only what the bound one takes.</summary>
    [Fact]
    public void TwoWells_FilledUntilFull_LastAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: Two wells filled until full, then emptied
            system: 14 V
            horizon: 5 h
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 18 Ah
                rate: 20 h
                peukert: 1.2
                resistance: 60 mohm
                emf: [[0 %, 10.9 V], [10 %, 11.7 V], [50 %, 12.3 V], [100 %, 12.8 V]]
                charge: 60 %
                charge_efficiency: 88 %
                capacity_model: kinetic
                kinetic: {available: 46 %, rate: 0.6 /h, capacity: 20 Ah}
            alternators:
              alternator: {bus: main_bus, setpoint: 14.1 V, rated: 20 A, droop: 15 mohm, driven_by: engine}
            buses:
              battery_bus: {}
              main_bus: {cutoff: 10.8 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 6 mohm}}
            loads:
              displays: {bus: main_bus, power: 65 W, minimum: 9 V}
              radios: {bus: main_bus, current: 3 A, minimum: 9 V}
            failure_cases:
              failure: {timeline: [{at: 80 min, fail: [alternator]}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(-12.074610, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.842863, SimulatedNetwork.Run(Text, 80).Battery("main_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(144.73986, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(149.39884, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(16.270984, run.Received("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(9.956703, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }
}
