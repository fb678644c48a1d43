using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>Questions that builders bring, with answers computed by hand from the inputs stated; assumed inputs are marked.</summary>
[Trait("Kind", "Validation")]
public sealed class PractitionerCases
{
    [Theory]
    [InlineData(true, 139.8)]
    [InlineData(false, 173.9)]
    public void ContactorCoil_OnTheBattery_CostsHalfAnHour(bool closed, double minutes)
    {
        // 16 Ah at 20 h, k 1.2; coil 0.8 A; essential bus 4.0 A: 20 h (0.8/I)^1.2.
        var scenario = Scenario() with
        {
            Buses = [Bus("battery_bus"), Bus("main_bus"), Bus("essential_bus")],
            Batteries = [Battery("battery", "battery_bus", 16, 20, 1.2, Table((0, 12), (100, 12)), PiecewiseLinear.Constant(10))],
            Feeds =
            [
                Feed("master", "battery_bus", "main_bus", 1) with { Contactor = new Contactor { IsClosed = true, Coil = new ConstantCurrent(Current.FromAmperes(0.8)) } },
                Feed("essential", "battery_bus", "essential_bus", 5),
            ],
            Loads = [Amperes("essentials", "essential_bus", 4, 5)],
        };

        var run = scenario.Run(closed ? Case() : Case(At(0, (ActionVerb.Open, "master"))));

        Assert.Equal(minutes, run.Battery("battery").TimeToExhaustion.Minutes(), 0.05);
    }

    [Fact]
    public void CrankingDrop_AtTheEngineComputer_FollowsTheResistance()
    {
        // 12.6 V at rest (assumed), 8 V at 250 A: 18.4 mohm in all; 10 V needs at most 10.4 mohm, 9 V at most 14.4.
        foreach (var (milliohms, volts) in new[] { (18.4, 8.0), (10.4, 10.0), (14.4, 9.0) })
        {
            var scenario = Scenario(0.001) with
            {
                Buses = [Bus("bus")],
                Batteries = [Battery("battery", "bus", 20, 20, 1.2, Table((0, 12.6), (100, 12.6)), PiecewiseLinear.Constant(milliohms))],
                Loads = [Amperes("starter", "bus", 250, 5)],
            };

            Assert.Equal(volts, scenario.Run().Bus("bus").StartVoltage.Volts, 1e-6);
        }
    }

    [Theory]
    [InlineData(10, 20)]
    [InlineData(5, 40)]
    [InlineData(25, 6.66)]
    public void Peukert_TwoHundredAmpereHours_IsKeyedToItsRating(double amperes, double hours)
    {
        var scenario = Scenario(50) with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 200, 20, 1.2, Table((0, 12), (100, 12)), PiecewiseLinear.Constant(5))],
            Loads = [Amperes("load", "bus", amperes, 5)],
        };

        Assert.Equal(hours * 60, scenario.Run().Battery("battery").TimeToExhaustion.Minutes(), hours * 60 * 5e-4);
    }

    [Fact]
    public void ConstantPower_OnAFallingBattery_LastsShorterThanItsBenchCurrentSays()
    {
        // 38.4 W on 16 Ah at 20 h, k 1.2, volts falling 12.6 to 10.5 linearly with charge (assumed): 3.62 h; 2.8 A from the bench at 13.5 V: 4.45 h.
        var battery = Battery("battery", "bus", 16, 20, 1.2, Table((0, 10.5), (100, 12.6)), PiecewiseLinear.Constant(1e-3));
        var scenario = Scenario(6) with { Buses = [Bus("bus")], Batteries = [battery], Loads = [Watts("display", "bus", 38.4, 9)] };
        var bench = scenario with { Loads = [Amperes("display", "bus", 2.8, 9)] };

        Assert.Equal(3.62, scenario.Run().Battery("battery").TimeToExhaustion.Minutes() / 60, 0.005);
        Assert.Equal(4.45, bench.Run().Battery("battery").TimeToExhaustion.Minutes() / 60, 0.005);
    }

    [Theory]
    [InlineData(120, 9.0, 16.7)]
    [InlineData(210, double.NaN, double.NaN)] // at most 144 W
    public void ConstantPower_ThroughAWeakSource_SettlesOrCollapses(double milliohms, double volts, double amperes)
    {
        var scenario = Scenario(0.001) with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 20, 20, 1.2, Table((0, 11), (100, 11)), PiecewiseLinear.Constant(milliohms))],
            Loads = [Watts("load", "bus", 150, 5)],
        };

        var run = scenario.Run();

        if (double.IsNaN(volts))
        {
            Assert.Equal(LossReason.VoltageCollapse, run.Load("load").LostBecause);
            return;
        }

        Assert.Equal(volts, run.Bus("bus").StartVoltage.Volts, 0.05);
        Assert.Equal(amperes, run.Battery("battery").StartCurrent.Amperes, 0.05);
    }

    [Fact]
    public void RedundantFeeds_ATenthOfAVoltApart_ShareUnequally()
    {
        // 10 A through two paths of 20 mohm with 0.1 V between their sources (assumed): (I +- dV/R)/2 = 7.5 A and 2.5 A.
        var scenario = Scenario(0.001) with
        {
            Buses = [Bus("one"), Bus("two"), Bus("boxes")],
            Alternators = [Alternator("higher", "one", 12.1, 1e-6, 100), Alternator("lower", "two", 12.0, 1e-6, 100)],
            Feeds = [Feed("path_one", "one", "boxes", 20), Feed("path_two", "two", "boxes", 20)],
            Loads = [Amperes("ignition_one", "boxes", 5, 8), Amperes("ignition_two", "boxes", 5, 8)],
        };

        var run = scenario.Run();

        Assert.Equal(7.5, run.Feed("path_one").StartCurrent.Amperes, 1e-5);
        Assert.Equal(2.5, run.Feed("path_two").StartCurrent.Amperes, 1e-5);
    }
}
