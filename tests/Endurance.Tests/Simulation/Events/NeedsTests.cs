using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>An encoder that is of no use without its transponder, on a battery of 12.5 V under an alternator of 14 V.</summary>
public sealed class NeedsTests
{
    [Fact]
    public void Load_WhoseNeedDropsOut_IsLostWithItForItsReasonAndComesBackWithIt()
    {
        var run = Bench(Amperes("transponder", "bus", 2, 13).Restarting(13.5, 30)).Run(
            Case(At(5, (ActionVerb.Fail, "alternator")), At(8, (ActionVerb.Restore, "alternator"))));

        var encoder = run.Load("encoder");
        Assert.Equal(5, encoder.TimePowered.Minutes(), 1e-6);
        Assert.Equal(LossReason.BelowMinimum, encoder.LostBecause);
        Assert.Null(encoder.TimeLostForGood);
        Assert.Equal(8.5, Assert.Single(run.Events, happened => happened is { Part: "encoder", Kind: EventKind.LoadBack }).Time.Minutes, 1e-6);
    }

    [Fact]
    public void Load_WhoseNeedIsShed_IsLostAtThatMinuteAndBackWhenItIsConnected()
    {
        var run = Bench(Amperes("transponder", "bus", 2)).Run(Case(At(5, (ActionVerb.Shed, "transponder")), At(8, (ActionVerb.Connect, "transponder"))));

        Assert.Equal(5, run.Load("encoder").TimePowered.Minutes(), 1e-6);
        Assert.Null(run.Load("encoder").TimeLostForGood);
        Assert.Null(run.Load("transponder").TimePowered);
        Assert.Null(run.Load("transponder").TimeShed);
    }

    [Fact]
    public void Load_ShedBeforeItsNeed_IsNotLost()
    {
        var run = Bench(Amperes("transponder", "bus", 2)).Run(Case(At(4, (ActionVerb.Shed, "encoder")), At(5, (ActionVerb.Shed, "transponder"))));

        Assert.Null(run.Load("encoder").TimePowered);
        Assert.Equal(4, run.Load("encoder").TimeShed.Minutes(), 1e-6);
    }

    [Fact]
    public void Load_WhoseNeedStays_StaysToo()
    {
        var run = Bench(Amperes("transponder", "bus", 2, 11)).Run(Case(At(5, (ActionVerb.Fail, "alternator"))));

        Assert.Null(run.Load("encoder").TimePowered);
    }

    /// <summary>Of two needs one is enough to lose it, and both have to be back.</summary>
    [Fact]
    public void Load_OfTwoNeeds_WaitsForBoth()
    {
        var scenario = Bench(Amperes("transponder", "bus", 2), Amperes("antenna", "bus", 1));
        scenario = scenario with { Loads = [scenario.Loads[0] with { Needs = ["transponder", "antenna"] }, .. scenario.Loads.Skip(1)] };

        var run = scenario.Run(Case(
            At(5, (ActionVerb.Shed, "antenna")), At(6, (ActionVerb.Shed, "transponder")),
            At(8, (ActionVerb.Connect, "antenna")), At(9, (ActionVerb.Connect, "transponder"))));

        Assert.Equal(5, run.Load("encoder").TimePowered.Minutes(), 1e-6);
        Assert.Equal(9, Assert.Single(run.Events, happened => happened is { Part: "encoder", Kind: EventKind.LoadBack }).Time.Minutes, 1e-6);
    }

    /// <summary>An encoder needs the transponder, which needs its antenna: all three come back at once, in whatever order they stand.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Chain_WhoseEndIsConnectedAgain_ComesBackAtThatMinute(bool isReversed)
    {
        var scenario = Bench(Amperes("transponder", "bus", 2) with { Needs = ["antenna"] }, Amperes("antenna", "bus", 1));
        scenario = scenario with { Loads = isReversed ? [.. scenario.Loads.Reverse()] : scenario.Loads };

        var run = scenario.Run(Case(At(5, (ActionVerb.Shed, "antenna")), At(8, (ActionVerb.Connect, "antenna")), At(20, (ActionVerb.Shed, "antenna"))));

        foreach (var name in new[] { "encoder", "transponder" })
        {
            Assert.Equal(5, run.Load(name).TimePowered.Minutes(), 1e-6);
            Assert.Equal(8, Assert.Single(run.Events, happened => happened.Part == name && happened.Kind == EventKind.LoadBack).Time.Minutes, 1e-6);
            Assert.Equal(20, run.Load(name).TimeLostForGood.Minutes(), 1e-6);
        }
    }

    private static Scenario Bench(params Load[] needs) => Ramp.Standing(12.5, [Amperes("encoder", "bus", 0.1) with { Needs = ["transponder"] }, .. needs]) with
    {
        Alternators = [Alternator("alternator", "bus", 14, 1, 400)],
    };
}
