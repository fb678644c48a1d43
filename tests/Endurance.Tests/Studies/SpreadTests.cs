using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Spread;
using Endurance.Studies.Sweeps;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class SpreadTests
{
    /// <summary>Health spread evenly from 60 to 100 % at a constant current: the minutes are spread evenly from 60 to 100 % of the new ones.</summary>
    [Fact]
    public void Spread_EvenHealth_GivesTheExactMeanAndQuantiles()
    {
        const int samples = 400;
        var scenario = OneLoad() with { Tolerances = [new Tolerance("battery.health", new Uniform(0.6, 1))] };
        var newMinutes = scenario.Batteries[0].LifetimeAt(Current.FromAmperes(5)).Minutes;

        var spread = SpreadStudy.Run(scenario, new SpreadOptions { Samples = samples, Seed = 7 })[0];

        // One draw in each slice of 0.4/400: the mean is within half a slice over sqrt(400), a quantile within one slice.
        Assert.Equal(0.8 * newMinutes, spread.Seconds.Average() / 60, 0.0005 * newMinutes);
        Assert.Equal(0.62 * newMinutes, spread.Quantile(0.05).Minutes(), 0.002 * newMinutes);
        Assert.Equal(0.80 * newMinutes, spread.Quantile(0.50).Minutes(), 0.002 * newMinutes);
        Assert.Equal(0.98 * newMinutes, spread.Quantile(0.95).Minutes(), 0.002 * newMinutes);
    }

    /// <summary>Two batteries, each with a load of its own, healths even from 60 to 100 %: the first loss is the lesser of the two.</summary>
    /// <remarks>Median of the lesser of two independent even numbers from 0 to 1: 1 - sqrt(1/2); of two that move together: 1/2.</remarks>
    [Theory]
    [InlineData(null, 0.6 + (0.4 * 0.2928932))]
    [InlineData("age", 0.8)]
    public void Spread_TwoBatteries_AreLowTogetherOnlyInAGroup(string? group, double median)
    {
        const int samples = 2000;
        var one = OneLoad();
        var newMinutes = one.Batteries[0].LifetimeAt(Current.FromAmperes(5)).Minutes;
        var two = one with
        {
            Buses = [Bus("bus"), Bus("bus2")],
            Batteries = [one.Batteries[0], one.Batteries[0] with { Name = "battery2", Bus = "bus2" }],
            Loads = [one.Loads[0], Amperes("load2", "bus2", 5)],
            Tolerances = [new Tolerance("battery.health", new Uniform(0.6, 1), group), new Tolerance("battery2.health", new Uniform(0.6, 1), group)],
        };

        var spread = SpreadStudy.Run(two, new SpreadOptions { Samples = samples, Seed = 7 })[0];

        Assert.Equal(median * newMinutes, spread.Quantile(0.5).Minutes(), 0.01 * newMinutes);
    }

    [Fact]
    public void Sensitivity_OfAGroup_MovesAllOfItAtOnce()
    {
        var scenario = OneLoad() with
        {
            Tolerances = [new Tolerance("battery.health", new Uniform(0.8, 1), "lot"), new Tolerance("battery.capacity_factor", new Uniform(0.5, 1), "lot")],
        };
        var newMinutes = scenario.Batteries[0].LifetimeAt(Current.FromAmperes(5)).Minutes;

        var row = Assert.Single(SweepStudy.Sensitivity(scenario, new SimulationOptions()));

        Assert.Equal("lot", row.Quantity);
        Assert.True(row.IsGroup);
        Assert.Equal(0.81 * 0.525 * newMinutes, row.Low.Cases[0].Endurance.Minutes(), 0.01);
        Assert.Equal(0.99 * 0.975 * newMinutes, row.High.Cases[0].Endurance.Minutes(), 0.01);
    }

    /// <summary>Whatever the order of the file, a factor on everything multiplies what one tolerance has set.</summary>
    [Fact]
    public void Spread_AFactorOnAllLoads_MultipliesTheCurrentDrawnForOne()
    {
        var scenario = OneLoad() with
        {
            Tolerances = [new Tolerance("loads.draw", new Uniform(1.999, 2.001)), new Tolerance("load.current", new Uniform(9.99, 10.01))],
        };

        var spread = SpreadStudy.Run(scenario, new SpreadOptions { Samples = 20 })[0];

        Assert.Equal(scenario.Batteries[0].LifetimeAt(Current.FromAmperes(20)).Minutes, spread.Quantile(0.5).Minutes(), 0.2);
    }

    [Fact]
    public void Spread_RequirementInTheMiddle_IsMetByHalf()
    {
        var scenario = OneLoad() with { Tolerances = [new Tolerance("battery.health", new Uniform(0.6, 1))] };
        var half = scenario.Batteries[0].LifetimeAt(Current.FromAmperes(5)) * 0.8;
        var required = scenario with { Requirements = [new Requirement { Loads = ["load"], Endure = half }] };

        var met = SpreadStudy.Run(required, new SpreadOptions { Samples = 200, Seed = 3 })[0].Requirements[0];

        Assert.Equal(0.5, met.Share, 0.005);
        Assert.InRange(0.5, met.Interval.Low, met.Interval.High);
    }

    [Fact]
    public void Spread_SameSeed_GivesTheSameNumbers()
    {
        var scenario = OneLoad() with
        {
            Tolerances = [new Tolerance("battery.health", new Triangular(0.7, 0.8, 0.9)), new Tolerance("loads.draw", new Normal(1, 0.05))],
        };

        var first = SpreadStudy.Run(scenario, new SpreadOptions { Samples = 50, Seed = 11 })[0];
        var second = SpreadStudy.Run(scenario, new SpreadOptions { Samples = 50, Seed = 11 })[0];
        var other = SpreadStudy.Run(scenario, new SpreadOptions { Samples = 50, Seed = 12 })[0];

        Assert.Equal(first.Seconds.AsEnumerable(), second.Seconds.AsEnumerable());
        Assert.NotEqual(first.Seconds.AsEnumerable(), other.Seconds.AsEnumerable());
    }

    [Theory]
    [InlineData(60, 60)]
    [InlineData(60, 200)]
    [InlineData(400, 500)]
    public void Run_EndedWhenDecided_GivesTheSameVerdictsAndMinutes(double first, double second)
    {
        var scenario = OneLoad() with
        {
            Loads = [Amperes("load", "bus", 5), Amperes("other", "bus", 1)],
            Requirements = [new Requirement { Loads = ["load"], Endure = Duration.FromMinutes(first) }, new Requirement { Loads = ["other"], Endure = Duration.FromMinutes(second) }],
            FailureCases = [Case(At(30, (ActionVerb.Shed, "other")), At(90, (ActionVerb.Connect, "other")), At(150, (ActionVerb.Shed, "load")))],
        };

        var whole = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions())[0];
        var ended = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions { EndsWhenDecided = true })[0];

        Assert.Equal(whole.Requirements.AsEnumerable(), ended.Requirements.AsEnumerable());
        Assert.Equal(whole.Endurance, ended.Endurance);
    }

    /// <summary>95 % score intervals, Brown, Cai and DasGupta, Statistical Science 16 (2001) 101 (formula; the figures from memory, unverified): 0 of 10 gives 0 to 0.2775, 5 of 10 gives 0.2366 to 0.7634.</summary>
    [Theory]
    [InlineData(0, 10, 0, 0.2775)]
    [InlineData(5, 10, 0.2366, 0.7634)]
    [InlineData(10, 10, 0.7225, 1)]
    public void WilsonInterval_FewTrials_IsTheTabledOne(int successes, int trials, double low, double high)
    {
        var interval = WilsonInterval.Of(successes, trials);

        Assert.Equal(low, interval.Low, 1e-4);
        Assert.Equal(high, interval.High, 1e-4);
    }

    [Fact]
    public void Sensitivity_TwoTolerances_MovesTheMinutesByEachAlone()
    {
        var scenario = OneLoad() with
        {
            Tolerances = [new Tolerance("battery.health", new Uniform(0.8, 1)), new Tolerance("load.current", new Uniform(4, 6))],
        };

        var rows = SweepStudy.Sensitivity(scenario, new SimulationOptions());

        Assert.Equal(["battery.health", "load.current"], rows.Select(row => row.Quantity));
        // The 5 % and 95 % points of each are 0.81 and 0.99 of the capacity, and 4.1 A and 5.9 A.
        double Life(double amperes) => scenario.Batteries[0].LifetimeAt(Current.FromAmperes(amperes)).Minutes;
        double[] expected = [0.81 * Life(5), 0.99 * Life(5), Life(4.1), Life(5.9)];
        Assert.All(expected.Zip(rows.SelectMany(row => new[] { row.Low, row.High })), pair => Assert.Equal(pair.First, pair.Second.Cases[0].Endurance.Minutes(), 0.01));
    }

    /// <summary>A bell curve about 95 % of charge reaches beyond a full battery, which nothing is: what was run is what is told.</summary>
    [Fact]
    public void Sensitivity_BeyondTheBoundOfItsQuantity_TellsTheValueThatWasRun()
    {
        var scenario = OneLoad() with { Tolerances = [new Tolerance("battery.charge", new Normal(0.95, 0.05))] };

        var row = Assert.Single(SweepStudy.Sensitivity(scenario, new SimulationOptions()));

        // The 5 % point of a normal distribution lies where (1 + erf(x/sqrt 2))/2 = 0.05, at x = -1.644854 standard deviations.
        Assert.Equal(0.95 - (1.644854 * 0.05), row.Low.Value, 1e-6);
        Assert.Equal(1, row.High.Value);
    }

    private static Scenario OneLoad() => Scenario(horizonHours: 10) with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", 20, 20, 1.2, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(0.01))],
        Loads = [Amperes("load", "bus", 5)],
        FailureCases = [Case()],
    };
}
