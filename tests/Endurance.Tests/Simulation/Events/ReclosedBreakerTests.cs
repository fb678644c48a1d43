using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>A breaker of 5 A, factor 1.25 and 50 s, that carries 10 A: from cold it opens after 50 s ln(4/(4 - 1.5625)), which is 24.8 s.</summary>
public sealed class ReclosedBreakerTests
{
    private static readonly double Opens = 50 * Math.Log(4 / (4 - (1.25 * 1.25)));

    /// <summary>Written from the battery to the load or the other way round, it is the same breaker; the first opening is the one told.</summary>
    [Theory]
    [InlineData("near", "far")]
    [InlineData("far", "near")]
    public void Breaker_ClosedAgain_OpensAgainAndTellsItsFirstTime(string from, string to)
    {
        var run = Bench(from, to).Run(Case(At(1, (ActionVerb.Connect, "load")), At(20, (ActionVerb.Close, "feed"))));

        var breaker = Assert.Single(run.Protections);
        Assert.Equal(60 + Opens, breaker.TimeOpened!.Value.Seconds, 0.01);
        Assert.Equal(10, breaker.OpenedAt!.Value.Amperes, 1e-6);
        var tripped = run.Events.Where(happened => happened.Kind == EventKind.Tripped).ToArray();
        Assert.Equal([60 + Opens, 1200 + Opens], tripped.Select(happened => happened.Time.Seconds), new Within(0.01));
        Assert.All(tripped, happened => Assert.Equal("feed breaker opened: 10 A through 5 A", happened.What));
    }

    /// <summary>After a minute it has lost 1 - exp(-60/50) of the heat it opened at, and opens sooner: 50 s ln((4 - left)/(4 - 1.5625)).</summary>
    [Fact]
    public void Breaker_ClosedAgainWhileWarm_OpensSooner()
    {
        var closed = 60 + Opens + 60;
        var left = 1.5625 * Math.Exp(-60 / 50.0);

        var run = Bench("near", "far").Run(Case(At(1, (ActionVerb.Connect, "load")), At(closed / 60, (ActionVerb.Close, "feed"))));

        var second = run.Events.Last(happened => happened.Kind == EventKind.Tripped).Time.Seconds;
        Assert.Equal(closed + (50 * Math.Log((4 - left) / (4 - 1.5625))), second, 0.02);
    }

    private static Scenario Bench(string from, string to) => Scenario(1) with
    {
        Buses = [Bus("near"), Bus("far")],
        Batteries = [Ramp.Steady(12, bus: "near")],
        Feeds =
        [
            Feed("feed", from, to, 1) with
            {
                Breaker = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(5), TimeConstant = Duration.FromSeconds(50) },
            },
        ],
        Loads = [Amperes("load", "far", 10).Off()],
    };

    private sealed class Within(double tolerance) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

        public int GetHashCode(double obj) => 0;
    }
}
