namespace Endurance.Tests.Reference;

/// <summary>Waiting steps, restarts, collapse and boxes with two inputs over whole cases, beside what ngspice 39 solves; see <see cref="SimulatedNetwork"/>.</summary>
[Trait("Kind", "Validation")]
public sealed class SimulatedEvents
{
    /// <summary>Converged at 0.5 s and 1e-9. The bus is below 11.9 V from minute 24.31330; 12.0 V come back at 29.58785, and 40 s later the displays.</summary>
    [Fact]
    public void WaitingStepAndRestart_AfterADip_ComeWhenSimulated()
    {
        const string Text = """
            endurance: 1
            title: Steps that wait, loads that restart
            system: 14 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 26 Ah
                rate: 20 h
                peukert: 1.14
                charge: 92 %
                resistance: 16 mohm
                emf: [[0 %, 10.9 V], [15 %, 11.7 V], [55 %, 12.3 V], [100 %, 12.9 V]]
                polarisation: [{resistance: 9 mohm, time: 60 s}]
            buses:
              battery_bus: {}
              main_bus: {cutoff: 11.0 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 6 mohm}}
            loads:
              radios: {bus: main_bus, current: 3 A, minimum: 9 V}
              displays: {bus: main_bus, power: 70 W, minimum: 11.3 V, restart: 12.0 V, start_up: 40 s}
              pitot_heat: {bus: main_bus, resistance: 2 ohm, minimum: 8 V}
              landing_light: {bus: main_bus, resistance: 0.55 ohm, minimum: 8 V, state: off}
            failure_cases:
              failure:
                timeline:
                  - {at: 25 min, connect: [landing_light], lasts: 4 min}
                  - when: {bus: main_bus, below: 11.9 V, for: 90 s}
                    shed: [pitot_heat]
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(12.466671, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(25.75948, run.Lost("displays"), SimulatedNetwork.Minutes);
        Assert.Equal(25.8133, run.MinuteOf("pitot_heat shed"), SimulatedNetwork.Minutes);
        Assert.Equal(30.25452, run.MinuteOf("displays powered again"), SimulatedNetwork.Minutes);
        Assert.Equal(76.74398, run.Load("displays").TimeLostForGood.Minutes(), SimulatedNetwork.Minutes);
        Assert.Equal(119.40022, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(136.13874, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(17.940881, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.02 s and 1e-11, to 1e-6. The current is the closed form of one source, v = (V + sqrt(V^2 - 4 r P))/2; it ends where V^2 = 4 r P.</summary>
    [Fact]
    public void ConstantPower_BeyondWhatTheBatteryGives_CollapsesAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: An inverter asks for more than a low battery can give
            system: 14 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 15 Ah
                rate: 1 h
                peukert: 1.1
                resistance: [[0 %, 110 mohm], [30 %, 55 mohm], [100 %, 30 mohm]]
                emf: [[0 %, 10.8 V], [10 %, 11.6 V], [50 %, 12.3 V], [100 %, 12.9 V]]
            buses:
              battery_bus: {}
              main_bus: {cutoff: 7.5 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 10 mohm}}
            loads:
              inverter: {bus: main_bus, power: 330 W, minimum: 4 V}
              radios: {bus: main_bus, current: 3 A, minimum: 3 V}
            failure_cases:
              discharge: {timeline: []}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(11.646624, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(31.33439, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(19.74666, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(20.41746, run.MinuteOf("voltage collapse on main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(20.41746, run.Lost("inverter"), SimulatedNetwork.Minutes);
        Assert.Equal(63.59222, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(14.226777, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
    }

    /// <summary>Converged at 0.5 s and 1e-9; the last minute moved by 2e-5.</summary>
    [Fact]
    public void BoxWithTwoInputs_AcrossATie_LastsAsSimulated()
    {
        const string Text = """
            endurance: 1
            title: A box fed from two buses, a converter between the systems
            system: 28 V
            batteries:
              main_battery:
                bus: battery_bus
                capacity: 13 Ah
                rate: 1 h
                peukert: 1.09
                charge: 97 %
                resistance: 34 mohm
                emf: [[0 %, 21.8 V], [12 %, 23.6 V], [55 %, 24.8 V], [100 %, 25.8 V]]
              standby_battery:
                bus: standby_bus
                capacity: 5 Ah
                rate: 10 h
                peukert: 1.15
                resistance: [[0 %, 190 mohm], [100 %, 80 mohm]]
                emf: [[0 %, 21.5 V], [30 %, 23.8 V], [100 %, 25.2 V]]
            buses:
              battery_bus: {}
              main_bus: {cutoff: 22.0 V}
              standby_bus: {cutoff: 22.0 V}
            feeds:
              master: {from: battery_bus, to: main_bus, wire: {resistance: 7 mohm}}
              tie: {from: main_bus, to: standby_bus, switch: open, resistor: {resistance: 400 mohm, rated: 50 W}}
            diodes:
              box_diode: {kind: silicon, saturation_current: 0.01 uA, ideality: 1.7, series_resistance: 20 mohm, temperature: 27 degC}
            loads:
              displays:
                inputs: [{bus: main_bus, diode: box_diode}, {bus: standby_bus, diode: box_diode}]
                power: 95 W
                minimum: 20.5 V
              standby_horizon: {bus: standby_bus, power: 12 W, minimum: 19 V}
              radios: {bus: main_bus, current: 3.5 A, minimum: 20 V}
              pumps: {bus: main_bus, resistance: 7 ohm, minimum: 18 V}
            failure_cases:
              discharge: {timeline: [{at: 15 min, close: [tie]}, {at: 32 min, open: [tie]}]}
            """;

        var run = SimulatedNetwork.Run(Text);

        Assert.Equal(25.296615, run.Bus("main_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(25.13285, run.Bus("standby_bus").StartVoltage.Volts, SimulatedNetwork.Volts);
        Assert.Equal(10.651667, run.Battery("main_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.83938, run.Battery("standby_battery").StartCurrent.Amperes, SimulatedNetwork.Amperes);
        Assert.Equal(0.683792, SimulatedNetwork.Run(Text, 40).Battery("standby_battery").ChargeEnd, SimulatedNetwork.Charge);
        Assert.Equal(82.45536, run.BelowCutoff("main_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(82.95164, run.BelowCutoff("standby_bus"), SimulatedNetwork.Minutes);
        Assert.Equal(86.06557, run.Lost("displays"), SimulatedNetwork.Minutes);
        Assert.Equal(86.06557, run.Exhausted("main_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(137.54703, run.Exhausted("standby_battery"), SimulatedNetwork.Minutes);
        Assert.Equal(13.021464, run.Delivered("main_battery"), SimulatedNetwork.AmpereHours);
        Assert.Equal(4.009016, run.Delivered("standby_battery"), SimulatedNetwork.AmpereHours);
    }
}
