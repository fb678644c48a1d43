using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>What a step is told as, and whether somebody must have recognised the failure to take it.</summary>
public sealed class StepWordsTests
{
    [Theory]
    [InlineData(ActionVerb.Fail, "battery", "battery failed", false)]
    [InlineData(ActionVerb.ShortCell, "battery", "battery has a shorted cell", false)]
    [InlineData(ActionVerb.Restore, "battery", "battery restored", true)]
    [InlineData(ActionVerb.Fail, "alternator", "alternator failed", false)]
    [InlineData(ActionVerb.Shed, "alternator", "alternator shed", true)]
    [InlineData(ActionVerb.Connect, "alternator", "alternator connected", true)]
    [InlineData(ActionVerb.Stop, "engine", "engine stopped", false)]
    [InlineData(ActionVerb.Start, "engine", "engine started", true)]
    [InlineData(ActionVerb.Idle, "engine", "engine at idle", false)]
    [InlineData(ActionVerb.Cruise, "engine", "engine at cruise", false)]
    [InlineData(ActionVerb.Open, "feed", "feed opened", true)]
    [InlineData(ActionVerb.Close, "feed.breaker", "feed.breaker closed", true)]
    [InlineData(ActionVerb.Break, "feed", "feed broken", false)]
    [InlineData(ActionVerb.Restore, "feed", "feed restored", true)]
    [InlineData(ActionVerb.Short, "spare", "spare shorted", false)]
    [InlineData(ActionVerb.Shed, "lamp", "lamp shed", true)]
    [InlineData(ActionVerb.Select, "selector", "selector turned to aft", true)]
    public void Step_OfAVerb_IsToldAndIsARecognitionWhereSomebodyActs(ActionVerb verb, string target, string words, bool recognised)
    {
        var step = new TimelineStep
        {
            Trigger = new AtTime(Duration.FromMinutes(4)),
            Actions = [new TimelineAction(verb, target, verb == ActionVerb.Select ? "aft" : null)],
        };

        var run = Bench.Run(Case(step));

        Assert.Equal(words, Assert.Single(run.Events, happened => happened.Kind == EventKind.Step).What);
        Assert.Equal(recognised ? 4 : double.PositiveInfinity, run.Recognition.Minutes(), 1e-9);
    }

    /// <summary>A failure that passes by itself is restored by nobody: who sheds the lamp at 9 min is the first to act.</summary>
    [Fact]
    public void Recognition_OfAFailureThatPassesByItself_WaitsForSomebody()
    {
        var run = Bench.Run(Case(At(4, (ActionVerb.Break, "feed")) with { Lasts = Duration.FromMinutes(1) }, At(9, (ActionVerb.Shed, "lamp"))));

        Assert.Equal(9, run.Recognition.Minutes(), 1e-9);
    }

    [Theory]
    [InlineData(90, "lamp shed (near below 12.4 V for 90 s)")]
    [InlineData(120, "lamp shed (near below 12.4 V for 2 min)")]
    [InlineData(180, "lamp shed (near below 12.4 V for 3 min)")]
    public void Step_ThatWaits_TellsForWhat(double seconds, string words) =>
        Assert.Equal(words, Assert.Single(Bench.Run(Case(When("near", 12.4, seconds, (ActionVerb.Shed, "lamp")))).Events, happened => happened.Kind == EventKind.Step).What);

    [Fact]
    public void Load_BehindASelectorThatIsTurnedAway_NamesTheFeed()
    {
        var step = new TimelineStep { Trigger = new AtTime(Duration.FromMinutes(4)), Actions = [new TimelineAction(ActionVerb.Select, "selector", "aft")] };

        var run = Bench.Run(Case(step));

        Assert.Equal(4, run.Load("lamp").TimePowered.Minutes(), 1e-9);
        Assert.Equal(LossReason.FeedOpened, run.Load("lamp").LostBecause);
    }

    private static Scenario Bench => Scenario(0.25) with
    {
        Buses = [Bus("near"), Bus("far"), Bus("tail")],
        Batteries = [Ramp.Steady(12, bus: "near") with { Cells = 6 }],
        Alternators = [Alternator("alternator", "tail", 14, 10, 40) with { DrivenBy = "engine", IsOn = false }],
        Feeds =
        [
            Feed("feed", "near", "far", 100) with
            {
                Switch = new Switch { IsClosed = true },
                Breaker = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(50) },
            },
            Feed("spare", "near", "tail", 100, Schottky(20, 1.05, 6)),
        ],
        Selectors = [new Selector { Name = "selector", Positions = [("front", "feed"), ("aft", "spare")], At = "front" }],
        Loads = [Ohms("lamp", "far", 2)],
    };
}
