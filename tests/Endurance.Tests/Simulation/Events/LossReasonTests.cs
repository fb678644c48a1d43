using Endurance.Components;
using Endurance.Numerics;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

public sealed class LossReasonTests
{
    private const double Minutes = 1e-5;

    [Fact]
    public void DeadBus_FromTheStart_IsAtZeroVoltsAndItsLoadsNeverFed()
    {
        var scenario = Ramp.Standing(12, Amperes("fed", "bus", 1, 10), Amperes("orphan", "island", 1, 10), Ohms("second_orphan", "island", 5)) with
        {
            Buses = [Bus("bus"), Bus("island", 11)],
        };

        var run = scenario.Run();

        Assert.Equal(0, run.Bus("island").StartVoltage.Volts);
        Assert.Equal(0, run.Bus("island").TimeToCutoff.Minutes());
        foreach (var name in new[] { "orphan", "second_orphan" })
        {
            Assert.Equal(LossReason.NeverFed, run.Load(name).LostBecause);
            Assert.Equal(0, run.Load(name).TimePowered.Minutes());
        }

        Assert.Null(run.Load("fed").LostBecause);
    }

    [Fact]
    public void Load_ConnectedToABusThatNothingFeeds_IsNeverFedAtThatMinute()
    {
        var scenario = Ramp.Standing(12, Amperes("late", "island", 1, 10).Off()) with { Buses = [Bus("bus"), Bus("island")] };

        var run = scenario.Run(Case(At(7, (ActionVerb.Connect, "late"))));

        Assert.Equal(7, run.Load("late").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.NeverFed, run.Load("late").LostBecause);
    }

    [Fact]
    public void Load_BehindAFeedThatIsOpened_NamesTheFeed()
    {
        var run = BehindASwitch().Run(Case(At(5, (ActionVerb.Open, "feed"))));

        Assert.Equal(5, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.FeedOpened, run.Load("load").LostBecause);
    }

    [Fact]
    public void Load_BehindAFeedThatBreaksAndIsRestored_ComesBackWhenItHasNoMinimum()
    {
        var scenario = BehindASwitch() with { Loads = [Ohms("load", "far", 5)] };

        var run = scenario.Run(Case(At(5, (ActionVerb.Break, "feed")), At(6, (ActionVerb.Restore, "feed"))));

        Assert.Equal(5, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.FeedOpened, run.Load("load").LostBecause);
        Assert.Null(run.Load("load").TimeLostForGood);
    }

    [Fact]
    public void Load_ConnectedBehindAFeedOpenedBefore_NamesTheFeed()
    {
        var scenario = BehindASwitch() with { Loads = [Amperes("late", "far", 1, 10).Off()] };

        var run = scenario.Run(Case(At(5, (ActionVerb.Open, "feed")), At(6, (ActionVerb.Connect, "late"))));

        Assert.Equal(LossReason.FeedOpened, run.Load("late").LostBecause);
    }

    [Fact]
    public void Load_WhoseOnlyBatteryFails_HasADeadBus()
    {
        var run = BehindASwitch().Run(Case(At(5, (ActionVerb.Fail, "battery"))));

        Assert.Equal(LossReason.BusDead, run.Load("load").LostBecause);
        Assert.Equal(5, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(5, run.End.Minutes, Minutes);
        Assert.Equal(0, run.Bus("far").LowestVoltage.Volts);
    }

    [Fact]
    public void Load_WhoseOnlySourceFailsAtZero_HasADeadBusAndWasFedBefore()
    {
        var run = BehindASwitch().Run(Case(At(0, (ActionVerb.Fail, "battery"))));

        Assert.Equal(LossReason.BusDead, run.Load("load").LostBecause);
        Assert.Equal(0, run.Load("load").TimePowered.Minutes());
    }

    [Fact]
    public void Load_ShedBeforeItsLoss_IsNotLost()
    {
        var run = Ramp.Falling(Amperes("load", "bus", 10, 12.4)).Run(Case(At(9.9, (ActionVerb.Shed, "load"))));

        Assert.Null(run.Load("load").TimePowered);
        Assert.Equal(9.9, run.Load("load").TimeShed.Minutes(), Minutes);
    }

    [Fact]
    public void Load_LostAndThenShed_StaysLostFromItsMinute()
    {
        var run = Ramp.Falling(Amperes("load", "bus", 9, 12.4), Amperes("base", "bus", 1)).Run(Case(At(20, (ActionVerb.Shed, "load"))));

        Assert.Equal(10, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(10, run.Load("load").TimeLostForGood.Minutes(), Minutes);
    }

    [Fact]
    public void Load_WithoutMinimum_IsJudgedAtItsBusCutoffAndStaysConnected()
    {
        var run = (Ramp.Falling(Amperes("load", "bus", 10)) with { Buses = [Bus("bus", 12.4)] }).Run();

        Assert.Equal(10, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.BelowMinimum, run.Load("load").LostBecause);
        Assert.Equal(60, run.Battery("battery").TimeToExhaustion.Minutes(), Minutes);
    }

    [Fact]
    public void Load_WithoutMinimumOrCutoff_IsJudgedAtOneVolt()
    {
        // EMF proportional to charge: 12 V x exp(-t/tau) at the EMF, tau = 10 Ah x 2.01 ohm/12 V.
        var scenario = Scenario() with
        {
            Horizon = Endurance.Quantities.Duration.FromHours(20),
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 10, 20, 1, Table((0, 0.0), (100, 12)), PiecewiseLinear.Constant(10))],
            Loads = [Ohms("load", "bus", 2)],
        };

        var run = scenario.Run();

        Assert.Equal(60 * 10 * 2.01 / 12 * Math.Log(12 * 2 / 2.01), run.Load("load").TimePowered.Minutes(), 1e-3);
    }

    [Fact]
    public void Load_WithItsOwnMinimum_IgnoresItsBusCutoff()
    {
        var run = (Ramp.Falling(Amperes("load", "bus", 10, 12.2)) with { Buses = [Bus("bus", 12.4)] }).Run();

        Assert.Equal(10, run.Bus("bus").TimeToCutoff.Minutes(), Minutes);
        Assert.Equal(14, run.Load("load").TimePowered.Minutes(), Minutes);
    }

    [Fact]
    public void ConstantCurrent_BelowOneVoltWithoutMinimum_FallsLinearly()
    {
        // 5 A asked from 1 V behind 0.4 ohm would need 2 V: v = 1 - 0.4 x 5 v, so v = 1/3.
        var scenario = (Ramp.Standing(1, Amperes("load", "bus", 5)) with
        {
            Batteries = [Ramp.Steady(1) with { Resistance = PiecewiseLinear.Constant(0.4) }],
        }).For(0.01);

        Assert.Equal(1 / 3.0, scenario.Run().Bus("bus").StartVoltage.Volts, 1e-8);
    }

    private static Scenario BehindASwitch() => Ramp.Standing(12, Amperes("load", "far", 1, 10)) with
    {
        Buses = [Bus("bus"), Bus("far")],
        Feeds = [Feed("feed", "bus", "far", 5) with { Switch = new Switch { IsClosed = true } }],
    };
}
