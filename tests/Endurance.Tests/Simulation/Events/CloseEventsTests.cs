using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

public sealed class CloseEventsTests
{
    private const double Minutes = 1e-5;

    [Fact]
    public void LoadBelowMinimum_OnAStraightFall_IsLostAtItsInstant()
    {
        var run = Ramp.Falling(Amperes("load", "bus", 10, 12.4)).Run();

        Assert.Equal(10, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.BelowMinimum, run.Load("load").LostBecause);
        Assert.Equal(10, run.Load("load").TimeLostForGood.Minutes(), Minutes);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TwoLoads_WithOneMinimum_DropTogetherInEitherOrder(bool reversed)
    {
        var run = Ordered(reversed, Amperes("a", "bus", 6, 12.4), Amperes("b", "bus", 4, 12.4)).Run();

        Assert.Equal(10, run.Load("a").TimePowered.Minutes(), Minutes);
        Assert.Equal(run.Load("a").TimePowered, run.Load("b").TimePowered);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TwoLoads_WithMinimaTwentyMillivoltsApart_TheHigherSparesTheOther(bool reversed)
    {
        // At 10 min the first drops, the bus rises by 50 mV to 12.45 V and falls by 0.025 V a minute: 12.38 V after 2.8 min more.
        var run = Ordered(reversed, Amperes("a", "bus", 5, 12.4), Amperes("b", "bus", 5, 12.38)).Run();

        Assert.Equal(10, run.Load("a").TimePowered.Minutes(), Minutes);
        Assert.Equal(12.8, run.Load("b").TimePowered.Minutes(), Minutes);
    }

    [Fact]
    public void ManyCutoffs_CrossedInsideOneStep_AreEachLocated()
    {
        var scenario = Ramp.Falling(Amperes("load", "bus", 10)) with
        {
            Buses = [Bus("bus", 12.4), Bus("a", 12.399), Bus("b", 12.39), Bus("c", 12.38999), Bus("d", 11)],
            Feeds = [Feed("fa", "bus", "a", 1), Feed("fb", "bus", "b", 1), Feed("fc", "bus", "c", 1), Feed("fd", "bus", "d", 1)],
        };

        var run = scenario.Run();

        Assert.Equal([10, 10.02, 10.2, 10.2002, 38], run.Buses.Select(bus => Math.Round(bus.TimeToCutoff.Minutes(), 5)));
        Assert.Equal(5, run.Events.Count(item => item.Kind == EventKind.BusBelowCutoff));
        Assert.Equal(run.Events.Select(item => item.Time).Order(), run.Events.Select(item => item.Time));
    }

    [Theory]
    [InlineData(1e-6, false)]
    [InlineData(-1e-6, true)]
    public void Bus_TurnedBackAMicrovoltFromItsCutoff_IsLostOnlyWhenItCrossed(double above, bool lost)
    {
        // The cutoff lies a microvolt beside the voltage at 10 min, when the alternator comes back.
        var scenario = Ramp.Falling(Amperes("load", "bus", 10)) with
        {
            Buses = [Bus("bus", 12.4 - above)],
            Alternators = [Alternator("alternator", "bus", 14, 10, 40)],
        };

        var run = scenario.Run(Case(At(0, (ActionVerb.Fail, "alternator")), At(10, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(lost, run.Bus("bus").TimeToCutoff is not null);
        Assert.Null(run.Bus("bus").TimeToCutoffForGood);
    }

    [Fact]
    public void Bus_StandingAPicovoltAboveItsCutoff_IsNotLost()
    {
        var run = (Ramp.Standing(12.4) with { Buses = [Bus("bus", 12.4 - 1e-12)] }).Run();

        Assert.Equal(12.4, run.Bus("bus").StartVoltage.Volts, 1e-12);
        Assert.Null(run.Bus("bus").TimeToCutoff);
    }

    [Theory]
    [InlineData(1e-6, 0, 0)]
    [InlineData(-1e-6, 1e-6, 1e-4)]
    public void Bus_StartingBesideItsCutoff_IsLostAtOnceOrJustAfter(double above, double earliest, double latest)
    {
        var run = (Ramp.Falling(Amperes("load", "bus", 10)) with { Buses = [Bus("bus", 12.9 + above)] }).Run();

        Assert.InRange(run.Bus("bus").TimeToCutoff.Minutes(), earliest, latest);
    }

    [Fact]
    public void OneEvent_CausingAnother_HappensAtTheSameInstant()
    {
        // At 12.4 V the step connects 20 A, the bus falls by 0.2 V, and a load that needs 12.3 V goes with it.
        var scenario = Ramp.Falling(Amperes("base", "bus", 9), Amperes("fragile", "bus", 1, 12.3), Amperes("heater", "bus", 20).Off());

        var run = scenario.Run(Case(When("bus", 12.4, 0, (ActionVerb.Connect, "heater"))));

        Assert.Equal(10, run.Load("fragile").TimePowered.Minutes(), Minutes);
        Assert.Equal(run.Recognition, run.Load("fragile").TimePowered);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Steps_AtOneInstant_TheLastWrittenWins(bool reversed)
    {
        var steps = new[] { At(5, (ActionVerb.Shed, "load")), At(5, (ActionVerb.Connect, "load")) };
        if (reversed)
            Array.Reverse(steps);

        var run = Ramp.Standing(12, Amperes("load", "bus", 1, 10)).Run(Case(steps));

        Assert.Equal(reversed ? 5 : double.PositiveInfinity, run.Load("load").TimeShed.Minutes(), Minutes);
    }

    [Fact]
    public void Step_AtTheHorizon_IsCarriedOut()
    {
        var run = Ramp.Standing(12, Amperes("load", "bus", 1, 10)).Run(Case(At(60, (ActionVerb.Shed, "load"))));

        Assert.Equal(60, run.Load("load").TimeShed.Minutes(), 1e-9);
        Assert.Equal(60, run.End.Minutes, 1e-9);
    }

    [Fact]
    public void Step_BeyondTheHorizon_IsNotCarriedOut()
    {
        var run = Ramp.Standing(12, Amperes("load", "bus", 1, 10)).Run(Case(At(60.001, (ActionVerb.Shed, "load"))));

        Assert.Null(run.Load("load").TimeShed);
        Assert.Null(run.Recognition);
    }

    [Fact]
    public void Step_AtTheInstantOfExhaustion_BothHappen()
    {
        // 10 Ah at 10 A: empty at 60 min, when the feed from a second battery closes.
        var scenario = Ramp.Falling(Amperes("load", "bus", 10)) with
        {
            Buses = [Bus("bus"), Bus("backup_bus")],
            Batteries = [Ramp.FallingBattery, Ramp.Steady(12, "backup", "backup_bus")],
            Feeds = [Feed("backup_feed", "backup_bus", "bus", 5) with { Switch = new Switch { IsClosed = false } }],
        };

        var run = scenario.Run(Case(At(60, (ActionVerb.Close, "backup_feed"))));

        Assert.Equal(60, run.Recognition.Minutes(), 1e-9);
        Assert.Null(run.Load("load").TimeLostForGood);
        Assert.Equal(60, run.Battery("battery").TimeToExhaustion?.Minutes ?? 60, Minutes);
    }

    [Fact]
    public void Exhaustion_JustBeforeAStep_DropsTheLoadFirst()
    {
        var scenario = Ramp.Falling(Amperes("load", "bus", 10, 5), Amperes("other", "bus", 1).Off());

        var run = scenario.Run(Case(At(60.001, (ActionVerb.Connect, "other"))));

        Assert.Equal(60, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.BusDead, run.Load("load").LostBecause);
        Assert.Equal(60.001, run.Load("other").TimePowered.Minutes(), Minutes);
    }

    [Fact]
    public void Horizon_BeforeAnyLoss_LeavesEveryTimeAbsent()
    {
        var scenario = (Ramp.Falling(Amperes("load", "bus", 10, 12.4)) with { Buses = [Bus("bus", 12.3)] }).For(9.999);

        var run = scenario.Run();

        Assert.Null(run.Load("load").TimePowered);
        Assert.Null(run.Load("load").TimeLostForGood);
        Assert.Null(run.Load("load").LostBecause);
        Assert.Null(run.Bus("bus").TimeToCutoff);
        Assert.Null(run.Battery("battery").TimeToExhaustion);
        Assert.Equal(9.999, run.End.Minutes, 1e-9);
    }

    private static Scenario Ordered(bool reversed, params Load[] loads)
    {
        if (reversed)
            Array.Reverse(loads);
        return Ramp.Falling(loads);
    }
}
