using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>12.9 V less 0.05 V a minute under 10 A; a light that comes on 30 s below 12 V, so at 18.5 min, and a pilot who sheds the lamp two minutes later.</summary>
public sealed class WarningStepsTests
{
    private static readonly TimelineStep Shedding = new()
    {
        Trigger = new WhenWarned("light", Duration.FromMinutes(2)),
        Actions = [new TimelineAction(ActionVerb.Shed, "lamp")],
    };

    [Fact]
    public void Warning_BusLowForItsTime_ComesOnAndThePilotActsAfterHis()
    {
        var run = Falling.Run(Case(Shedding));

        var warning = Assert.Single(run.Warnings);
        Assert.Equal(18.5, warning.TimeOn.Minutes(), 1e-4);
        Assert.Equal(1 - (18.5 / 60), Assert.Single(warning.ChargesWhenOn), 1e-6);
        Assert.Equal(20.5, run.Load("lamp").TimeShed.Minutes(), 1e-4);
        Assert.Equal(20.5, run.Recognition.Minutes(), 1e-4);
        Assert.False(warning.HasFailed);
    }

    [Fact]
    public void Warning_ThatHasFailed_StaysDarkAndNobodyActs()
    {
        var run = Falling.Run(Case(At(0, (ActionVerb.Fail, "light")), Shedding));

        var warning = Assert.Single(run.Warnings);
        Assert.Null(warning.TimeOn);
        Assert.Empty(warning.ChargesWhenOn);
        Assert.True(warning.HasFailed);
        Assert.Null(run.Load("lamp").TimeShed);
    }

    [Fact]
    public void Warning_RestoredWhileTheBusIsLow_ComesOnAfterItsTime()
    {
        var run = Falling.Run(Case(At(0, (ActionVerb.Fail, "light")), At(25, (ActionVerb.Restore, "light")), Shedding));

        Assert.Equal(25.5, Assert.Single(run.Warnings).TimeOn.Minutes(), 1e-4);
        Assert.Equal(27.5, run.Load("lamp").TimeShed.Minutes(), 1e-4);
    }

    /// <summary>Low from 18 min on and failed at 18.2 min, while it counts its 30 s: restored at 25 min it counts them anew.</summary>
    [Fact]
    public void Warning_FailedWhileItCounts_CountsAnewOnceRestored()
    {
        var run = Falling.Run(Case(At(18.2, (ActionVerb.Fail, "light")), At(25, (ActionVerb.Restore, "light"))));

        Assert.Equal(25.5, Assert.Single(run.Warnings).TimeOn.Minutes(), 1e-4);
    }

    [Fact]
    public void Warning_RestoredAlthoughItNeverFailed_CountsOn()
    {
        var run = Falling.Run(Case(At(18.2, (ActionVerb.Restore, "light"))));

        Assert.Equal(18.5, Assert.Single(run.Warnings).TimeOn.Minutes(), 1e-4);
    }

    /// <summary>The starter of 100 A turns from 3 min to 5 min; the light has failed from 3.25 min to 10 min and never saw it for 30 s.</summary>
    [Fact]
    public void Warning_RestoredOnceItsBusIsBack_StaysDark()
    {
        var scenario = Ramp.Standing(12.5, Amperes("starter", "bus", 100).Off()) with { Warnings = [Light] };

        var run = scenario.Run(Case(
            At(3, (ActionVerb.Connect, "starter")), At(3.25, (ActionVerb.Fail, "light")),
            At(5, (ActionVerb.Shed, "starter")), At(10, (ActionVerb.Restore, "light"))));

        Assert.Null(Assert.Single(run.Warnings).TimeOn);
    }

    /// <summary>12.5 V behind 10 mohm: a starter of 100 A leaves 11.5 V while it turns.</summary>
    [Theory]
    [InlineData(29, false)]
    [InlineData(31, true)]
    public void Warning_BusBackBeforeItsTime_StaysDark(double seconds, bool comesOn)
    {
        var scenario = Ramp.Standing(12.5, Amperes("starter", "bus", 100).Off()) with { Warnings = [Light] };

        var run = scenario.Run(Case(At(3, (ActionVerb.Connect, "starter")), At(3 + (seconds / 60), (ActionVerb.Shed, "starter"))));

        Assert.Equal(comesOn ? 3.5 : double.PositiveInfinity, Assert.Single(run.Warnings).TimeOn.Minutes(), 1e-6);
    }

    /// <summary>On once, it is on: a second fall of its bus is no second warning.</summary>
    [Fact]
    public void Warning_SecondFall_IsNoSecondWarning()
    {
        var scenario = Ramp.Standing(12.5, Amperes("starter", "bus", 100).Off(), Amperes("lamp", "bus", 1)) with { Warnings = [Light] };

        var run = scenario.Run(Case(
            At(3, (ActionVerb.Connect, "starter")), At(4, (ActionVerb.Shed, "starter")),
            At(10, (ActionVerb.Connect, "starter")), At(12, (ActionVerb.Shed, "starter")), Shedding));

        Assert.Equal(3.5, Assert.Single(run.Events, happened => happened.Kind == EventKind.Warning).Time.Minutes, 1e-6);
        Assert.Equal(5.5, run.Load("lamp").TimeShed.Minutes(), 1e-6);
    }

    private static Scenario Falling => Ramp.Falling(Amperes("lamp", "bus", 4), Amperes("rest", "bus", 6)) with { Warnings = [Light] };

    private static LowVoltageWarning Light => new() { Name = "light", Senses = "bus", Below = Voltage.FromVolts(12), For = Duration.FromSeconds(30) };
}
