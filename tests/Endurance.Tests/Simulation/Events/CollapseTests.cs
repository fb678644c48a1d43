using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

public sealed class CollapseTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Collapse_TwoLoads_TheHigherMinimumDropsFirst(bool reversed)
    {
        // 12 V behind 0.2 ohm gives at most 180 W: 220 W cannot be, 100 W settles at (12 + sqrt(144 - 80))/2 = 10 V.
        var run = Weak(reversed, Watts("tender", "bus", 120, 9), Watts("hardy", "bus", 100, 5)).Run();

        Assert.Equal(LossReason.VoltageCollapse, run.Load("tender").LostBecause);
        Assert.Equal(0, run.Load("tender").TimePowered.Minutes());
        Assert.Null(run.Load("hardy").LostBecause);
        Assert.Equal(10, run.Bus("bus").StartVoltage.Volts, 1e-8);
    }

    [Fact]
    public void Collapse_EqualMinima_DropTogether()
    {
        var run = Weak(false, Watts("one", "bus", 120, 9), Watts("two", "bus", 100, 9)).Run();

        Assert.All(run.Loads, load => Assert.Equal(LossReason.VoltageCollapse, load.LostBecause));
        Assert.Equal(12, run.Bus("bus").StartVoltage.Volts, 1e-8);
    }

    [Fact]
    public void Collapse_NoMinimum_CountsAsTheLowest()
    {
        var run = Weak(false, Watts("none", "bus", 100), Watts("some", "bus", 120, 1)).Run();

        Assert.Null(run.Load("none").LostBecause);
        Assert.Equal(LossReason.VoltageCollapse, run.Load("some").LostBecause);
    }

    [Fact]
    public void Collapse_ConstantCurrentWithTheHighestMinimum_DropsFirst()
    {
        // 5 A leave 11 V and at most 151 W: 160 W collapse; without the 5 A they settle at (12 + sqrt(144 - 128))/2 = 8 V.
        var run = Weak(false, Watts("power", "bus", 160, 6), Amperes("current", "bus", 5, 10)).Run();

        Assert.Equal(LossReason.VoltageCollapse, run.Load("current").LostBecause);
        Assert.Null(run.Load("power").LostBecause);
        Assert.Equal(8, run.Bus("bus").StartVoltage.Volts, 1e-8);
    }

    [Fact]
    public void Collapse_BusThatIsBackAtOnce_CountsAsBelowItsCutoffAtThatMinute()
    {
        var scenario = Weak(false, Watts("tender", "bus", 120, 9), Watts("hardy", "bus", 100, 5)) with { Buses = [Bus("bus", 9.5)] };

        var run = scenario.Run();

        Assert.Equal(0, run.Bus("bus").TimeToCutoff.Minutes());
        Assert.Null(run.Bus("bus").TimeToCutoffForGood);
    }

    [Fact]
    public void Collapse_BehindALongWire_DropsOnlyWhatHangsThere()
    {
        var scenario = Weak(false, Watts("far_load", "far", 90, 5), Watts("near_load", "bus", 20, 9)) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Batteries = [Ramp.Steady(12)],
            Feeds = [Feed("long_wire", "bus", "far", 500)],
        };

        var run = scenario.Run();

        Assert.Equal(LossReason.VoltageCollapse, run.Load("far_load").LostBecause);
        Assert.Null(run.Load("near_load").LostBecause);
        Assert.Contains(run.Events, item => item.What == "voltage collapse on far");
        Assert.DoesNotContain(run.Events, item => item.What == "voltage collapse on bus");
    }

    [Fact]
    public void Collapse_ByALoadConnectedLater_ComesAtThatMinute()
    {
        var scenario = Weak(false, Watts("base", "bus", 100, 5), Watts("heater", "bus", 120, 9).Off());

        var run = scenario.Run(Case(At(12, (ActionVerb.Connect, "heater"))));

        Assert.Equal(12, run.Load("heater").TimePowered.Minutes(), 1e-6);
        Assert.Equal(LossReason.VoltageCollapse, run.Load("heater").LostBecause);
        Assert.Null(run.Load("base").LostBecause);
    }

    [Fact]
    public void Alternator_AtItsLimitWithoutABattery_DropsWhatItCannotHold()
    {
        // 20 A at most; 30 A asked. Without the tender load 18 A remain.
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus")],
            Alternators = [Alternator("alternator", "bus", 14, 10, 20)],
            Loads = [Amperes("tender", "bus", 12, 11), Amperes("hardy", "bus", 18, 5)],
        };

        var run = scenario.Run();

        Assert.Equal(0, run.Load("tender").TimePowered.Minutes());
        Assert.Equal(LossReason.BelowMinimum, run.Load("tender").LostBecause);
    }

    [Fact]
    public void Alternator_PastItsLimitUnderConstantPower_Collapses()
    {
        // 20 A at most: 270 W sit on the droop line, 14 V - 10 mohm x I, at 19.6 A; 290 W would need 21 A, and past the limit there is no holding.
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus")],
            Alternators = [Alternator("alternator", "bus", 14, 10, 20)],
            Loads = [Watts("possible", "bus", 270, 5), Watts("too_much", "bus", 20, 9).Off()],
        };

        var run = scenario.Run(Case(At(5, (ActionVerb.Connect, "too_much"))));

        Assert.Equal((14 + Math.Sqrt(196 - (4 * 0.01 * 270))) / 2, run.Bus("bus").StartVoltage.Volts, 1e-8);
        Assert.Equal(LossReason.VoltageCollapse, run.Load("too_much").LostBecause);
        Assert.Null(run.Load("possible").LostBecause);
    }

    /// <summary>
    /// A converter of 9 A asked for 3 A + 45.75 W/v + v/5 ohm, which is 3 + 2 sqrt(45.75/5) = 9.05 A at the least, at any v: its output falls.
    /// Its input takes at most 14 V x 9 A/0.87 = 145 W, with which 25 V behind 0.2 ohm stands at 23.2 V or above.
    /// </summary>
    [Theory]
    [InlineData(10)]
    [InlineData(43)]
    [InlineData(200)]
    public void Collapse_BehindAConverterPastItsLimit_LeavesWhatFeedsItAlone(double milliohms)
    {
        var scenario = Scenario(1) with
        {
            System = SystemVoltage.Volts28,
            Buses = [Bus("main", 21), Bus("avionics")],
            Batteries = [Battery("battery", "main", 100, 20, 1, PiecewiseLinear.Constant(25), PiecewiseLinear.Constant(milliohms))],
            Chargers =
            [
                new Charger
                {
                    Name = "converter", From = "main", To = "avionics", Output = Voltage.FromVolts(14), Limit = Current.FromAmperes(9), Efficiency = 0.87,
                    Droop = Resistance.FromMilliohms(60),
                },
            ],
            Loads =
            [
                Amperes("gyros", "main", 1, 18), Watts("pump", "main", 10, 17),
                Amperes("radios", "avionics", 3, 10), Watts("displays", "avionics", 45.75, 10.5), Ohms("light", "avionics", 5, 8).Off(),
            ],
        };

        var run = scenario.Run(Case(At(10, (ActionVerb.Connect, "light"))));

        Assert.Equal(["displays"], run.Loads.Where(load => load.TimePowered is not null).Select(load => load.Name));
        Assert.Equal(LossReason.VoltageCollapse, run.Load("displays").LostBecause);
        Assert.Null(run.Bus("main").TimeToCutoff);
    }

    private static Scenario Weak(bool reversed, params Load[] loads)
    {
        if (reversed)
            Array.Reverse(loads);
        return (Ramp.Standing(12, loads) with { Batteries = [Ramp.Steady(12) with { Resistance = PiecewiseLinear.Constant(0.2) }] }).For(20);
    }
}
