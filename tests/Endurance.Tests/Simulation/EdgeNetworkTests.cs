using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;
using static Endurance.Tests.Studies.Scenarios;

namespace Endurance.Tests.Simulation;

/// <summary>Networks on the edge of having no operating point, or of which a part hangs by a trace, which drawn networks once showed to be given up.</summary>
public sealed class EdgeNetworkTests
{
    /// <summary>The last operating point is followed so far that its Jacobian, worked out again, is just past singular.</summary>
    [Fact]
    public void Collapse_FollowedToItsVeryEnd_IsToldByItsBus()
    {
        const string text = """
            endurance: 1
            system: 14 V
            ambient: -19.3272 degC
            batteries:
              battery1: {bus: bus3, chemistry: flooded, capacity: 9.92506 Ah, rate: 20 h, charge: 48.5251 %, health: 76.9744 %, resistance_factor: 2.60671}
              battery2: {bus: bus4, chemistry: gel, discharge_points: [{current: 1.3517 A, lasts: 1200 min, to: 10.5 V}, {current: 5.0899 A, lasts: 293.768 min, to: 10.5 V}, {current: 15.0565 A, lasts: 92.9127 min, to: 10.5 V}], charge: 33.42 %}
            alternators:
              alternator1: {bus: bus1, setpoint: 14.7082 V, rated: 11.6326 A}
            buses:
              bus1: {}
              bus2: {}
              bus3: {}
              bus4: {}
            diodes:
              steering: {kind: schottky, forward: [[1 A, 0.35 V], [15 A, 0.52 V]], heat_path: 3 K/W}
            feeds:
              feed1: {from: bus2, to: bus1, breaker: {rated: 3.06639 A, resistance: 0.00906273 ohm}, fuse: {rated: 3.18947 A, resistance: 0.00666156 ohm}, return: {resistance: 0.00544026 ohm}}
              feed2: {from: bus1, to: bus3, wire: {gauge: 14 AWG, length: 4.84026 m}, resistor: {resistance: 2.87016 ohm}}
              feed3: {from: bus4, to: bus2}
            loads:
              load3: {bus: bus3, resistance: 13.8326 ohm}
              load4: {bus: bus4, power: 40.3158 W}
              load5: {bus: bus4, power: 4.30156 W, minimum: 10.3931 V, wire: {gauge: 22 AWG, length: 5.11946 m}}
              load6: {inputs: [{bus: bus2, diode: steering}, {bus: bus1, diode: {kind: ideal_controller, on_resistance: 0.0193502 ohm}}], power: 12.9479 W, restart: 9.33431 V, start_up: 28.8167 s, return: { resistance: 0.00809542 ohm}}
              load8: {bus: bus2, power: 47.1845 W, duty: 41.4225 %}
            failure_cases:
              drawn:
                timeline:
                  - {when: {bus: bus2, below: 10.7291 V}, close: [feed1], lasts: 5 min}
                  - {at: 0 min, fail: [alternator1]}
            """;

        var run = Run(text);

        Assert.Contains(run.Events, happened => happened.Kind == EventKind.VoltageCollapse);
        Assert.Equal(0, run.EnergyResidual, 1e-6);
    }

    /// <summary>A charger's output reaches three buses that are tied to each other firmly and to all else by leakage alone: rounding takes a pivot.</summary>
    [Fact]
    public void Charger_IntoBusesThatOnlyLeak_IsSolved()
    {
        const string text = """
            endurance: 1
            system: 14 V
            batteries:
              battery1: {bus: bus2, chemistry: flooded, ratings: [[20 h, 20 Ah]], charge: 82.8083 %}
              battery2: {bus: bus8, chemistry: flooded, capacity: 31.4085 Ah, rate: 5 h, charge: 43.4981 %}
              battery3: {bus: bus10, capacity: 21.9312 Ah, rate: 20 h, peukert: 1.04059, emf: [[0 %, 9.96432 V], [100 %, 11.25 V]], resistance: [[0 %, 27.3782 mohm], [100 %, 28.4941 mohm]], charge_acceptance: 1.07221 /h}
            alternators:
              alternator1: {bus: bus8, setpoint: 14.1934 V, rated: 43.5369 A}
            chargers:
              charger2: {from: bus6, to: bus11, output: 13.7312 V, limit: 18.6129 A, efficiency: 77.3524 %, droop: 0.0942057 ohm}
            buses:
              bus1: {}
              bus2: {}
              bus4: {}
              bus5: {}
              bus6: {}
              bus7: {}
              bus8: {}
              bus10: {}
              bus11: {}
            feeds:
              feed1: {from: bus1, to: bus2}
              feed3: {from: bus1, to: bus4, diode: {kind: silicon, forward: [[0.1 A, 0.62 V], [10 A, 0.95 V]]}}
              feed4: {from: bus5, to: bus4}
              feed5: {from: bus6, to: bus5, diode: {kind: silicon, forward: [[0.1 A, 0.62 V], [10 A, 0.95 V]]}}
              feed6: {from: bus6, to: bus7}
              feed9: {from: bus6, to: bus10, wire: {resistance: 0.0460273 ohm}}
              feed10: {from: bus11, to: bus4, wire: {resistance: 0.041687 ohm}}
            failure_cases:
              drawn:
                timeline:
                  - {at: 5 min, break: [feed6, feed5], lasts: 1 s}
            """;

        var run = Run(text);

        Assert.DoesNotContain(run.Events, happened => happened.Kind == EventKind.VoltageCollapse);
        Assert.Equal(0, run.EnergyResidual, 1e-6);
    }

    private static SimulationResult Run(string text)
    {
        var scenario = Read(text);
        return scenario.Run(scenario.FailureCases[0]);
    }
}
