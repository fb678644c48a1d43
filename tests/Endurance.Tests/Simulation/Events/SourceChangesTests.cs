using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

public sealed class SourceChangesTests
{
    private const double Minutes = 1e-5;

    private static Scenario EngineAndBattery => Ramp.Standing(12, Amperes("load", "bus", 10, 10)) with
    {
        Alternators = [Alternator("alternator", "bus", 14, 1, 4000) with { DrivenBy = "engine" }],
    };

    [Theory]
    [InlineData(ActionVerb.Stop, "engine", ActionVerb.Start)]
    [InlineData(ActionVerb.Fail, "alternator", ActionVerb.Restore)]
    [InlineData(ActionVerb.Shed, "alternator", ActionVerb.Connect)]
    public void Alternator_OffForFiveMinutes_LeavesTheLoadToTheBattery(ActionVerb off, string target, ActionVerb on)
    {
        var run = EngineAndBattery.Run(Case(At(5, (off, target)), At(10, (on, target))));

        Assert.Equal(10 * 5 / 60.0, run.Battery("battery").Delivered.AmpereHours, 1e-7);
        Assert.Null(run.Load("load").LostBecause);
        Assert.Equal(off == ActionVerb.Shed ? 5 : 10, run.Recognition.Minutes(), Minutes);
    }

    [Fact]
    public void Alternator_FailedOnAStoppedEngine_GivesNothingWhenTheEngineStartsAgain()
    {
        var run = EngineAndBattery.Run(Case(
            At(5, (ActionVerb.Stop, "engine")), At(6, (ActionVerb.Fail, "alternator")), At(10, (ActionVerb.Start, "engine"))));

        Assert.Equal(10 * 55 / 60.0, run.Battery("battery").Delivered.AmpereHours, 1e-6);
    }

    [Fact]
    public void Engine_WithTwoAlternators_StopsBoth()
    {
        var scenario = EngineAndBattery with
        {
            Alternators =
            [
                Alternator("one", "bus", 14, 1, 400) with { DrivenBy = "engine" }, Alternator("two", "bus", 14, 1, 400) with { DrivenBy = "engine" },
                Alternator("three", "bus", 13, 1, 400) with { DrivenBy = "other" },
            ],
        };

        var onOne = scenario.Run(Case(At(5, (ActionVerb.Stop, "engine"))));
        var onNone = scenario.Run(Case(At(5, (ActionVerb.Stop, "engine"), (ActionVerb.Stop, "other"))));

        Assert.Equal(0, onOne.Battery("battery").Delivered.AmpereHours, 1e-9);
        Assert.Equal(10 * 55 / 60.0, onNone.Battery("battery").Delivered.AmpereHours, 1e-6);
    }

    [Fact]
    public void Battery_FailedAndRestored_DipsItsLoadWithoutMinimum()
    {
        var run = Ramp.Standing(12, Amperes("load", "bus", 10)).Run(Case(At(5, (ActionVerb.Fail, "battery")), At(8, (ActionVerb.Restore, "battery"))));

        Assert.Equal(5, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.BusDead, run.Load("load").LostBecause);
        Assert.Null(run.Load("load").TimeLostForGood);
        Assert.Equal(10 * 57 / 60.0, run.Battery("battery").Delivered.AmpereHours, 1e-6);
        Assert.Equal(60, run.End.Minutes, 1e-9);
    }

    [Fact]
    public void Battery_FailedWhileAnotherFeeds_LeavesTheLoadAlone()
    {
        var scenario = Ramp.Standing(12, Amperes("load", "bus", 10, 10)) with { Batteries = [Ramp.Steady(12, "one"), Ramp.Steady(12, "two")] };

        var run = scenario.Run(Case(At(30, (ActionVerb.Fail, "one"))));

        Assert.Null(run.Load("load").LostBecause);
        Assert.Equal(2.5, run.Battery("one").Delivered.AmpereHours, 1e-6);
        Assert.Equal(7.5, run.Battery("two").Delivered.AmpereHours, 1e-6);
    }

    [Fact]
    public void ExhaustedBattery_UnderAReturningAlternator_ChargesAndGivesAgain()
    {
        // Empty at 60 min; 30 min of alternator put charge back; from 100 min on the battery carries the load again.
        var scenario = Ramp.Falling(Amperes("load", "bus", 10)) with { Alternators = [Alternator("alternator", "bus", 14, 1, 20)] };

        var run = scenario.Run(Case(
            At(0, (ActionVerb.Fail, "alternator")), At(70, (ActionVerb.Restore, "alternator")), At(100, (ActionVerb.Fail, "alternator"))));

        Assert.Equal(60, run.Battery("battery").TimeToExhaustion.Minutes(), Minutes);
        Assert.Contains(run.Events, item => item.Kind == EventKind.BatteryRevived);
        // 20 A limit less 10 A of load for half an hour: 5 Ah, which last the 20 min to the horizon at 10 A.
        Assert.Equal(5, run.Battery("battery").Received.AmpereHours, 1e-6);
        Assert.Equal(0.5 - (20 / 60.0), run.Battery("battery").ChargeEnd, 1e-6);
        Assert.Equal(60, run.Load("load").TimePowered.Minutes(), Minutes);
        Assert.Null(run.Load("load").TimeLostForGood);
    }

    [Fact]
    public void EmptyBattery_FromTheStart_IsExhaustedAtZero()
    {
        var scenario = Ramp.Falling(Amperes("load", "bus", 10, 5)) with { Batteries = [Ramp.FallingBattery with { InitialCharge = 0 }] };

        var run = scenario.Run();

        Assert.Equal(0, run.Battery("battery").TimeToExhaustion.Minutes());
        Assert.Equal(0, run.Load("load").TimePowered.Minutes());
        Assert.Equal(0, run.End.Minutes);
    }

    [Fact]
    public void NoSourceLeft_WithATimedStepToCome_GoesOnUntilIt()
    {
        var scenario = Ramp.Falling(Amperes("load", "bus", 10)) with { Alternators = [Alternator("alternator", "bus", 14, 1, 20)] };

        var ended = scenario.Run(Case(At(0, (ActionVerb.Fail, "alternator"))));
        var revived = scenario.Run(Case(At(0, (ActionVerb.Fail, "alternator")), At(90, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(60, ended.End.Minutes, Minutes);
        Assert.Equal("no source left", ended.Events[^1].What);
        Assert.Equal(120, revived.End.Minutes, 1e-9);
        Assert.Equal(0, ended.Bus("bus").LowestVoltage.Volts);
    }

    [Fact]
    public void NormalCase_EmptyTimeline_RunsTheAircraftAsDrawn()
    {
        var run = EngineAndBattery.Run();

        Assert.Equal(0, run.Battery("battery").Delivered.AmpereHours, 1e-9);
        Assert.Null(run.Load("load").LostBecause);
        Assert.Null(run.Recognition);
    }

    [Fact]
    public void Trace_AcrossAJump_HoldsBothSides()
    {
        var options = new SimulationOptions { SampleInterval = Endurance.Quantities.Duration.FromMinutes(1) };

        var trace = EngineAndBattery.Run(Case(At(5.5, (ActionVerb.Stop, "engine"))), options).Trace!;

        var at = trace.Seconds.Index().Where(item => Math.Abs(item.Item - 330) < 1e-6).Select(item => trace.BusVolts[0].Values[item.Index]).ToArray();
        Assert.Equal(2, at.Length);
        Assert.True(at[0] > 13 && at[1] < 12);
        Assert.Equal(61 + 2 + 1, trace.Seconds.Length, 2.0);
    }
}
