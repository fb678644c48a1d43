using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using static Endurance.Tests.Parts;
using static Endurance.Tests.Studies.Scenarios;

namespace Endurance.Tests.Simulation;

/// <summary>Networks that nobody means to build, which drawn networks once showed to be answered wrongly.</summary>
public sealed class OddNetworkTests
{
    [Fact]
    public void FuseOfALoad_Opened_TellsTheCurrentThatOpenedIt()
    {
        var scenario = Scenario(horizonHours: 0.1) with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 100, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(1))],
            Loads =
            [
                Amperes("heater", "bus", 10) with
                {
                    IsOn = false,
                    Fuse = new Protection { Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(5), TimeConstant = Duration.FromSeconds(2) },
                },
            ],
        };

        var run = scenario.Run(Case(At(1, (ActionVerb.Connect, "heater"))));

        Assert.Equal(10, run.Protections.Single().OpenedAt!.Value.Amperes, 1e-6);
        Assert.Contains("heater fuse opened: 10 A through 5 A", run.Events.Select(happened => happened.What));
    }

    [Fact]
    public void Feed_OfAlmostNoResistance_StillBalancesTheEnergy()
    {
        var scenario = Scenario(horizonHours: 20) with
        {
            Buses = [Bus("near"), Bus("far")],
            Batteries = [Battery("battery", "near", 35, 5, 1.1, Table((0, 22), (100, 25.6)), PiecewiseLinear.Constant(20))],
            Feeds = [Feed("stub", "near", "far", 1e-4)],
            Loads = [Ohms("load", "far", 38)],
        };

        var run = scenario.Run(Case());

        Assert.Equal(0, run.EnergyResidual, 1e-7);
    }

    [Fact]
    public void Charger_ThatFeedsALeakageAlone_IsSolved()
    {
        const string text = """
            endurance: 1
            system: 14 V
            batteries:
              battery: {bus: supply, chemistry: gel, discharge_points: [{current: 1.72165 A, lasts: 1200 min, to: 10.5 V}]}
            chargers:
              charger: {from: node, to: charged, output: 14.3591 V, limit: 11.5799 A, efficiency: 76.0728 %, cut_in: 12.5831 V, cut_out: 12.1634 V}
            buses: {node: {}, charged: {}, supply: {}, idle: {}}
            feeds:
              lead: {from: node, to: supply, wire: {resistance: 0.0311961 ohm}}
              back: {from: node, to: charged, diode: silicon_12a}
              stub: {from: charged, to: idle}
            failure_cases:
              drawn: {timeline: [{at: 5 min}]}
            """;
        var scenario = Read(text);

        var run = scenario.Run(scenario.FailureCases[0]);

        Assert.InRange(run.Chargers.Single().HighestCurrent.Amperes, 0, 1e-6);
    }

    /// <summary>A battery too cold to be charged takes nothing, so that nothing but a leak says how high its bus stands.</summary>
    [Fact]
    public void Bus_ThatNothingHoldsDown_StandsNoHigherThanItsSource()
    {
        const string text = """
            endurance: 1
            system: 28 V
            ambient: -0.649486 degC
            batteries:
              battery: {bus: supply, chemistry: flooded, discharge_points: [{current: 1.86517 A, lasts: 1200 min, to: 21 V}], charge: 75.6069 %, polarisation: [{resistance: 0.0190096 ohm, time: 402.896 s}, {resistance: 0.0212063 ohm, time: 37.4983 s}], protection: {no_charge_below: 6.5605 degC}}
            buses: {spare: {}, side: {}, supply: {}, switched: {}, end: {}, stub: {}}
            feeds:
              spare_feed: {from: spare, to: side, diode: {kind: ideal_controller, on_resistance: 0.0100197 ohm}}
              side_feed: {from: side, to: supply, wire: {gauge: 10 AWG, length: 1.1773 m}, return: {resistance: 0.0132833 ohm}}
              main_feed: {from: supply, to: switched, diode: {kind: silicon, saturation_current: 5.07826E-05 A, series_resistance: 0.00790113 ohm}, contactor: {coil: 22.8093 ohm}, shunt: 0.000891881 ohm}
              end_feed: {from: switched, to: end, wire: {gauge: 2/0 AWG, length: 1.23504 m}}
              stub_feed: {from: switched, to: stub}
            failure_cases:
              drawn: {timeline: [{at: 40 min, open: [main_feed]}, {at: 51.8 min, close: [main_feed]}, {at: 102.9 min, close: [main_feed], lasts: 20 s}]}
            """;
        var scenario = Read(text);

        var run = scenario.Run(scenario.FailureCases[0], new SimulationOptions { SampleInterval = Duration.FromMinutes(1) });

        var highest = scenario.Batteries[0].Emf.Y.Max() + 1e-3;
        Assert.All(run.Trace!.BusVolts, bus => Assert.All(bus.Values, volts => Assert.InRange(volts, -1e-3, highest)));
        Assert.Equal(0, run.EnergyResidual, 1e-6);
    }

    /// <summary>Nothing flows through its feed, so an idle bus stands above the source by as much as the ground it returns through is lifted.</summary>
    [Fact]
    public void IdleBus_ThatReturnsThroughALiftedGround_MayStandAboveItsSource()
    {
        const string text = """
            endurance: 1
            system: 14 V
            batteries:
              battery: {bus: supply, chemistry: gel, capacity: 29.1779 Ah, rate: 20 h}
            alternators:
              alternator: {bus: charged, setpoint: 14.7774 V, rated: 53.9089 A}
            buses: {supply: {}, middle: {}, load_bus: {}, charged: {}, idle: {}}
            feeds:
              supply_feed: {from: supply, to: middle, return: {to: tail, resistance: 0.0150132 ohm}}
              load_feed: {from: middle, to: load_bus}
              idle_feed: {from: idle, to: charged, return: {to: tail, resistance: 0.00415001 ohm}}
            grounds:
              tail: {resistance: 0.00345655 ohm}
            loads:
              load: {bus: load_bus, current: 4.54355 A}
            failure_cases:
              drawn: {timeline: []}
            """;
        var scenario = Read(text);

        var start = scenario.Run(scenario.FailureCases[0]);

        Assert.Equal(14.7774 + (4.54355 * 0.00345655), start.Bus("idle").StartVoltage.Volts, 1e-6);
    }

    [Fact]
    public void Chargers_InACircle_SettleWhereTheEnergyBalances()
    {
        const string text = """
            endurance: 1
            system: 14 V
            ambient: 33.0385 degC
            batteries:
              battery: {bus: battery_bus, chemistry: flooded, capacity: 26.3086 Ah, rate: 10 h}
            chargers:
              up: {from: low, to: high, output: 14.2208 V, limit: 14.2998 A, efficiency: 76.2596 %}
              down: {from: high, to: low, output: 13.6708 V, limit: 10.8349 A, efficiency: 72.9405 %, cut_in: 13.0838 V, cut_out: 12.1854 V}
            buses: {battery_bus: {}, low: {}, spare: {}, high: {}}
            feeds:
              low_feed: {from: low, to: battery_bus, return: {resistance: 0.0180622 ohm}}
              spare_feed: {from: high, to: spare}
            loads:
              load: {bus: low, current: 7.35983 A}
            failure_cases:
              plain: {timeline: []}
            """;
        var scenario = Read(text);

        var run = scenario.Run(scenario.FailureCases[0]);

        Assert.Equal(0, run.EnergyResidual, 1e-6);
    }

    /// <summary>
    /// A power guessed for the charger that leaves no operating point is no collapse while a lower one, at which it settles, has one.
    /// The minute is our own, at a tolerance of 1e-9.
    /// </summary>
    [Theory]
    [InlineData(1e-4, 0.01)]
    [InlineData(1e-6, 0.002)]
    [InlineData(1e-8, 0.002)]
    public void Charger_WhosePowerIsGuessedTooHigh_MovesNoCollapse(double tolerance, double minutes)
    {
        const string text = """
            endurance: 1
            system: 14 V
            batteries:
              first: {bus: bus4, chemistry: flooded, discharge_points: [{current: 1.57436 A, lasts: 1200 min, to: 10.5 V}], charge: 39.6181 %, polarisation: [{resistance: 0.0195079 ohm, time: 523.403 s}]}
              second: {bus: bus6, capacity: 9.28301 Ah, rate: 10 h, peukert: 1.02327, emf: [[0 %, 10.0709 V], [100 %, 11.0364 V]], resistance: 41.8716 mohm, charge: 33.7185 %, health: 52.8328 %, charge_acceptance: 2.51059 /h}
            alternators:
              alternator: {bus: bus1, setpoint: 14.1591 V, rated: 29.1354 A, droop: 0.0141602 ohm}
            chargers:
              charger: {from: bus1, to: bus2, output: 13.351 V, limit: 17.964 A, efficiency: 62.1922 %, droop: 0.0213611 ohm}
            buses: {bus1: {}, bus2: {}, bus3: {}, bus4: {}, bus5: {}, bus6: {}}
            feeds:
              feed1: {from: bus1, to: bus2}
              feed2: {from: bus3, to: bus2, wire: {gauge: 22 AWG, length: 2.32944 m}}
              feed3: {from: bus3, to: bus4, diode: {kind: schottky, saturation_current: 2.80442E-05 A, ideality: 1.18774, series_resistance: 0.0188258 ohm}}
              feed4: {from: bus2, to: bus5}
              feed5: {from: bus4, to: bus6}
            selectors:
              selector: {positions: {one: feed1, two: feed2}, at: two}
            loads:
              steady: {inputs: [{bus: bus1, diode: {kind: silicon, saturation_current: 4.14992E-05 A, series_resistance: 0.0146762 ohm}}, {bus: bus3, diode: {kind: schottky, saturation_current: 4.36643E-05 A, series_resistance: 0.0186096 ohm}}], current: 8.09546 A, duty: 72.1433 %}
              other: {bus: bus2, current: 8.26457 A}
              lamp: {bus: bus5, resistance: 29.906 ohm}
              heater: {bus: bus5, resistance: 22.297 ohm}
              radio: {bus: bus3, power: 70.0988 W, wire: {gauge: 18 AWG, length: 3.53692 m}}
            failure_cases:
              drawn: {}
            """;
        var scenario = Read(text);

        var run = scenario.Run(scenario.FailureCases[0], new SimulationOptions { Tolerance = tolerance });

        Assert.Equal(5.0418, run.Load("radio").TimePowered!.Value.Minutes, minutes);
    }

    /// <summary>A load that is shed in the instant in which its needs fail has been lost by then, wherever it stands in the list.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void ChainOfNeeds_BrokenAsAStepShedsItsEnd_LosesItInEitherOrder(bool isReversed)
    {
        Load[] loads = [Amperes("pump", "bus", 1) with { IsOn = false }, Amperes("valve", "bus", 1) with { Needs = ["pump"] }, Amperes("heater", "bus", 1) with { Needs = ["valve"] }];
        var scenario = Scenario() with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 20, 20, 1.2, Table((0, 11), (100, 12)), PiecewiseLinear.Constant(20))],
            Loads = [.. isReversed ? loads.Reverse() : loads],
        };

        var run = scenario.Run(Case(When("bus", 12.6, 0, (ActionVerb.Shed, "heater"))));

        Assert.Equal(Duration.Zero, run.Load("heater").TimePowered);
    }

    [Fact]
    public void Landing_ThatChattersAtOnce_IsToldAndNotACrash()
    {
        const string text = """
            endurance: 1
            system: 14 V
            batteries:
              battery: {bus: near, chemistry: flooded, ratings: [[20 h, 20 Ah]]}
            buses: {near: {}, far: {}, dark: {}, darker: {}}
            feeds:
              dead_feed: {from: dark, to: darker, diode: schottky_15a}
              weak_feed: {from: near, to: far, resistor: {resistance: 1.44189 ohm}}
            loads:
              lamp: {bus: far, power: 94.072 W, restart: 11.9911 V, state: off}
            landing: {connect: [lamp], lasts: 10 min}
            failure_cases:
              plain: {timeline: []}
            """;
        var scenario = Read(text);

        var judged = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions()).Single();

        Assert.Contains(judged.Findings, finding => finding.Code == "landing-not-covered" || finding.Code == "chattering");
    }
}
