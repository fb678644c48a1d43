using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>What comes first where several things come at once, and how a case begins.</summary>
public sealed class OrderOfAnInstantTests
{
    /// <summary>12 V are below its minimum, but the case begins with the alternator connected.</summary>
    [Fact]
    public void Load_WhoseSourceIsConnectedAtZero_IsNotLostBefore()
    {
        var scenario = Ramp.Standing(12, Amperes("display", "bus", 2, 12.5)) with { Alternators = [Alternator("alternator", "bus", 14, 1, 400) with { IsOn = false }] };

        Assert.Null(scenario.Run(Case(At(0, (ActionVerb.Connect, "alternator")))).Load("display").TimePowered);
    }

    /// <summary>Below 12.4 V from the start for a minute the waiting step sheds the pump, which a timed step of the same instant connects: the timed one goes first.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Steps_TimedAndWaitingAtOneInstant_TheWaitingOneHasTheLastWord(bool reversed)
    {
        var steps = new[] { At(1, (ActionVerb.Connect, "pump")), When("bus", 12.4, 60, (ActionVerb.Shed, "pump")) };
        if (reversed)
            Array.Reverse(steps);

        Assert.Equal(1, Ramp.Standing(12, Amperes("pump", "bus", 2)).Run(Case(steps)).Load("pump").TimeShed.Minutes(), 1e-9);
    }

    /// <summary>Two feeds opened by one step leave two loads without a feed, and none by a dead bus.</summary>
    [Fact]
    public void Loads_BehindTwoFeedsOpenedAtOnce_BothNameTheFeed()
    {
        var run = Bench.Run(Case(At(5, (ActionVerb.Open, "left"), (ActionVerb.Open, "right"))));

        Assert.All(run.Loads, load => Assert.Equal(LossReason.FeedOpened, load.LostBecause));
        Assert.All(run.Loads, load => Assert.Equal(5, load.TimePowered.Minutes(), 1e-9));
    }

    /// <summary>A breaker that is opened by its own name is not closed with the contactor, which is what closes by the name of the feed.</summary>
    [Theory]
    [InlineData("left.breaker", 5.0)]
    [InlineData("left.contactor", null)]
    [InlineData("left", null)]
    public void Feed_ClosedByItsName_ClosesItsContactorAlone(string opened, double? lostForGood)
    {
        var run = Bench.Run(Case(At(5, (ActionVerb.Open, opened)), At(8, (ActionVerb.Close, "left"))));

        Assert.Equal(lostForGood ?? double.PositiveInfinity, run.Load("lamp").TimeLostForGood.Minutes(), 1e-9);
    }

    [Theory]
    [InlineData(false, false, false)]
    [InlineData(false, true, true)]
    [InlineData(true, false, true)]
    [InlineData(true, true, true)]
    public void Load_OnAtAnyTime_WasConnected(bool on, bool isSwitched, bool connected)
    {
        var scenario = Ramp.Standing(12, Amperes("load", "bus", 2) with { IsOn = on });
        TimelineStep[] steps = isSwitched ? [At(2, (ActionVerb.Shed, "load")), At(5, (ActionVerb.Connect, "load")), At(8, (ActionVerb.Shed, "load"))] : [];

        Assert.Equal(connected, scenario.Run(Case(steps)).Load("load").WasConnected);
    }

    /// <summary>A breaker of 5 A that has carried 4 A for ever is warm: at 10 A it opens after 50 s ln((4 - 0.64)/(4 - 1.5625)), 16.05 s.</summary>
    [Fact]
    public void Breaker_UnderASteadyCurrentAtZero_IsWarm()
    {
        var scenario = Bench with { Loads = [Amperes("base", "left_bus", 4), Amperes("more", "left_bus", 6).Off()] };

        var run = scenario.Run(Case(At(1, (ActionVerb.Connect, "more"))));

        Assert.Equal(60 + (50 * Math.Log((4 - 0.64) / (4 - 1.5625))), Assert.Single(run.Protections).TimeOpened!.Value.Seconds, 0.01);
    }

    /// <summary>
    /// A trip bends towards its instant and a falling bus does not: the radio's minimum lies where the bus would be 0.3 s after the trip,
    /// which takes 10 A away first. EMF 13 V to 10 V over 10 Ah behind 10 mohm: at 11 A it falls by 11 x 0.3 V/3600 s.
    /// </summary>
    [Fact]
    public void Trip_JustBeforeABusReachesAMinimum_ComesFirstAndSparesTheLoad()
    {
        var opens = 50 * Math.Log(4 / (4 - 1.5625));
        var minimum = 13 - 0.11 - (0.3 * ((1 * 60) + (11 * (opens + 0.3))) / 3600);
        var scenario = Bench with
        {
            Batteries = [Ramp.FallingBattery with { Bus = "bus" }],
            Loads = [Amperes("radio", "bus", 1, minimum), Amperes("heater", "left_bus", 10).Off()],
        };

        var run = scenario.Run(Case(At(1, (ActionVerb.Connect, "heater"))));

        Assert.Equal(60 + opens, Assert.Single(run.Protections).TimeOpened!.Value.Seconds, 0.02);
        Assert.True(run.Load("radio").TimePowered.Minutes() > 2);
    }

    [Fact]
    public void Losses_AndReturns_AreEachToldOnce()
    {
        var scenario = Ramp.Falling(Amperes("load", "bus", 10)) with { Buses = [Bus("bus", 12.4)], Alternators = [Alternator("alternator", "bus", 14, 1, 4000)] };

        var run = scenario.Run(Case(At(0, (ActionVerb.Fail, "alternator")), At(70, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(
            [
                (0, "alternator failed"), (10, "bus below its cutoff of 12.4 V"), (10, "load lost: below minimum"), (60, "battery exhausted"),
                (70, "alternator restored"), (70, "bus above its cutoff again"), (70, "load powered again"), (120, "end of the time simulated"),
            ],
            run.Events.Where(happened => happened.Kind != EventKind.BatteryRevived).Select(happened => (Math.Round(happened.Time.Minutes, 3), happened.What)).Order());
    }

    private static Scenario Bench => Scenario(1) with
    {
        Buses = [Bus("bus"), Bus("left_bus"), Bus("right_bus")],
        Batteries = [Ramp.Steady(12)],
        Feeds =
        [
            Feed("left", "bus", "left_bus", 1) with
            {
                Contactor = new Contactor { IsClosed = true },
                Breaker = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(5), TimeConstant = Duration.FromSeconds(50) },
            },
            Feed("right", "bus", "right_bus", 1) with { Switch = new Switch { IsClosed = true } },
        ],
        Loads = [Amperes("lamp", "left_bus", 2), Amperes("other", "right_bus", 2)],
    };
}
