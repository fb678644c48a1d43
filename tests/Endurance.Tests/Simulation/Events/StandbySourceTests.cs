using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>A standby alternator that somebody connects once the only battery, at 12 V, has failed after five minutes.</summary>
public sealed class StandbySourceTests
{
    private static readonly TimelineStep Failure = At(5, (ActionVerb.Fail, "battery"));

    /// <summary>Nothing gives while the bus is dead, and yet there is something to come.</summary>
    [Fact]
    public void DeadBus_WithAStepThatWaitsForIt_ComesBackWhenTheStepIsCarriedOut()
    {
        var run = Bench.Run(Case(Failure, When("bus", 11, 30, (ActionVerb.Connect, "standby"))));

        Assert.Equal(5, run.Load("lamp").TimePowered.Minutes(), 1e-6);
        Assert.Equal(5.5, Assert.Single(run.Events, happened => happened.Kind == EventKind.LoadBack).Time.Minutes, 1e-6);
        Assert.Equal(5.5, run.Recognition.Minutes(), 1e-6);
        Assert.Equal(60, run.End.Minutes, 1e-9);
        Assert.DoesNotContain(run.Findings, finding => finding.Code == "step-never-fired");
    }

    [Fact]
    public void DeadBus_WithAWarningThatSomebodyFollows_ComesBackWhenHeActs()
    {
        var scenario = Bench with
        {
            Warnings = [new LowVoltageWarning { Name = "light", Senses = "bus", Below = Voltage.FromVolts(11), For = Duration.FromSeconds(20) }],
        };
        var step = new TimelineStep
        {
            Trigger = new WhenWarned("light", Duration.FromSeconds(40)),
            Actions = [new TimelineAction(ActionVerb.Connect, "standby")],
        };

        var run = scenario.Run(Case(Failure, step));

        Assert.Equal(5 + (20 / 60.0), Assert.Single(run.Warnings).TimeOn.Minutes(), 1e-6);
        Assert.Equal(6, run.Recognition.Minutes(), 1e-6);
        Assert.Null(run.Load("lamp").TimeLostForGood);
    }

    [Fact]
    public void DeadBus_WithNothingToCome_EndsTheRunThere()
    {
        Assert.Equal(5, Bench.Run(Case(Failure)).End.Minutes, 1e-9);
    }

    private static Scenario Bench => Ramp.Standing(12, Ohms("lamp", "bus", 2)) with
    {
        Alternators = [Alternator("standby", "bus", 14, 10, 40) with { IsOn = false }],
    };
}
