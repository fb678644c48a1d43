using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

public sealed class RestartTests
{
    private const double Minutes = 1e-5;

    [Theory]
    [InlineData(0, 8)]
    [InlineData(45, 8.75)]
    public void Restart_VoltageComesBack_BringsTheLoadBackAfterItsStartUp(double startUp, double back)
    {
        var run = Dip(Amperes("display", "bus", 2, 12.2).Restarting(13, startUp));

        Assert.Equal(5, run.Load("display").TimePowered.Minutes(), Minutes);
        Assert.Null(run.Load("display").TimeLostForGood);
        Assert.Equal(back, Assert.Single(run.Events, item => item.Kind == EventKind.LoadBack).Time.Minutes, Minutes);
    }

    [Fact]
    public void NoRestart_VoltageComesBack_TheLoadStaysLost()
    {
        var run = Dip(Amperes("display", "bus", 2, 12.2));

        Assert.Equal(5, run.Load("display").TimeLostForGood.Minutes(), Minutes);
        Assert.DoesNotContain(run.Events, item => item.Kind == EventKind.LoadBack);
    }

    [Fact]
    public void Restart_VoltageBelowIt_TheLoadStaysLost() =>
        Assert.Equal(5, Dip(Amperes("display", "bus", 2, 12.2).Restarting(14.5)).Load("display").TimeLostForGood.Minutes(), Minutes);

    [Theory]
    [InlineData(0.0099, 8.75)] // less than 10 mV below: it goes on starting
    [InlineData(0.0101, 10.75)] // more: it starts anew when the voltage is back at 10 min
    public void Restart_SagsWhileStarting_StartsOverBeyondTenMillivolts(double sag, double back)
    {
        const double restart = 13;
        var scenario = Ramp.Standing(12, Amperes("display", "bus", 1e-3, 12.2).Restarting(restart, 45)) with
        {
            Alternators =
            [
                Alternator("alternator", "bus", 14, 1e-3, 4000),
                Alternator("sagging", "bus", restart - sag, 1e-3, 4000),
            ],
        };

        var run = scenario.Run(Case(
            At(5, (ActionVerb.Fail, "alternator"), (ActionVerb.Fail, "sagging")),
            At(8, (ActionVerb.Restore, "alternator"), (ActionVerb.Restore, "sagging")),
            At(8.5, (ActionVerb.Fail, "alternator")),
            At(10, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(back, Assert.Single(run.Events, item => item.Kind == EventKind.LoadBack).Time.Minutes, Minutes);
    }

    [Fact]
    public void Restart_NoWorthOfWaiting_IsReportedAsChatteringWithTheLoadsName()
    {
        // 10 A through 100 mohm: 11.9 V with the load, 12.9 V without it.
        var scenario = Ramp.Standing(12.9, Amperes("display", "bus", 10, 12).Restarting(12.5)) with
        {
            Batteries = [Ramp.Steady(12.9) with { Resistance = Endurance.Numerics.PiecewiseLinear.Constant(0.1) }],
        };

        var chattering = Assert.Throws<BrokenOffException>(() => scenario.Run());

        Assert.Equal("display", Assert.Single(chattering.BreakOff.Parts));
        Assert.StartsWith("case case: display switches itself on and off without end at minute 0.00.", chattering.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Restart_AfterMilliseconds_EndsAsChatteringRatherThanWithoutEnd()
    {
        var scenario = Ramp.Standing(12.9, Amperes("display", "bus", 10, 12).Restarting(12.5, 0.01)) with
        {
            Batteries = [Ramp.Steady(12.9) with { Resistance = Endurance.Numerics.PiecewiseLinear.Constant(0.1) }],
        };

        Assert.StartsWith("case case: after 20000 events display still switches on and off at minute ", Assert.Throws<BrokenOffException>(() => scenario.Run()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Restart_WithStartUp_CyclesAtItsStartUpTime()
    {
        var scenario = (Ramp.Standing(12.9, Amperes("display", "bus", 10, 12).Restarting(12.5, 30)) with
        {
            Batteries = [Ramp.Steady(12.9) with { Resistance = Endurance.Numerics.PiecewiseLinear.Constant(0.1) }],
        }).For(2.25);

        var run = scenario.Run();

        Assert.Equal(0, run.Load("display").TimePowered.Minutes());
        Assert.Equal([0.5, 1, 1.5, 2], run.Events.Where(item => item.Kind == EventKind.LoadBack).Select(item => Math.Round(item.Time.Minutes, 6)));
        Assert.Equal(2, run.Load("display").TimeLostForGood.Minutes(), Minutes);
    }

    [Fact]
    public void TwoDips_CountTheFirstLossAndTheLast()
    {
        var scenario = Ramp.Standing(12, Amperes("display", "bus", 2, 12.2).Restarting(13)) with { Alternators = [Alternator("alternator", "bus", 14, 1, 400)] };

        var run = scenario.Run(Case(
            At(5, (ActionVerb.Fail, "alternator")), At(8, (ActionVerb.Restore, "alternator")), At(20, (ActionVerb.Fail, "alternator"))));

        Assert.Equal(5, run.Load("display").TimePowered.Minutes(), Minutes);
        Assert.Equal(20, run.Load("display").TimeLostForGood.Minutes(), Minutes);
    }

    [Fact]
    public void DroppedLoad_ShedAndConnectedAgain_StartsAfresh()
    {
        var scenario = Ramp.Standing(12, Amperes("display", "bus", 2, 12.2)) with { Alternators = [Alternator("alternator", "bus", 14, 10, 40)] };

        var run = scenario.Run(Case(
            At(5, (ActionVerb.Fail, "alternator")), At(8, (ActionVerb.Restore, "alternator")),
            At(9, (ActionVerb.Shed, "display")), At(10, (ActionVerb.Connect, "display"))));

        Assert.Equal(5, run.Load("display").TimePowered.Minutes(), Minutes);
        Assert.Null(run.Load("display").TimeLostForGood);
    }

    [Fact]
    public void Collapse_LoadWithRestart_ComesBackWhenTheSourceIsStrongAgain()
    {
        var scenario = Ramp.Standing(12, Watts("display", "bus", 150, 5).Restarting(13)) with
        {
            Batteries = [Ramp.Steady(11) with { Resistance = Endurance.Numerics.PiecewiseLinear.Constant(0.21) }],
            Alternators = [Alternator("alternator", "bus", 14, 10, 40)],
        };

        var run = scenario.Run(Case(At(5, (ActionVerb.Fail, "alternator")), At(8, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(5, run.Load("display").TimePowered.Minutes(), Minutes);
        Assert.Equal(LossReason.VoltageCollapse, run.Load("display").LostBecause);
        Assert.Null(run.Load("display").TimeLostForGood);
    }

    /// <summary>An alternator at 14 V over a battery at 12 V, failed from 5 min to 8 min.</summary>
    private static SimulationResult Dip(Load load)
    {
        var scenario = Ramp.Standing(12, load) with { Alternators = [Alternator("alternator", "bus", 14, 1, 400)] };
        return scenario.Run(Case(At(5, (ActionVerb.Fail, "alternator")), At(8, (ActionVerb.Restore, "alternator"))));
    }
}
