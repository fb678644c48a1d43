using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

public sealed class WaitingStepsTests
{
    private const double Minutes = 1e-5;

    [Theory]
    [InlineData(0, 10)]
    [InlineData(60, 11)]
    [InlineData(90, 11.5)]
    public void When_BusFallsBelow_ComesAfterItsHoldingTime(double seconds, double minutes)
    {
        var run = Ramp.Falling(Amperes("base", "bus", 8), Amperes("pump", "bus", 2)).Run(Case(When("bus", 12.4, seconds, (ActionVerb.Shed, "pump"))));

        Assert.Equal(minutes, run.Recognition.Minutes(), Minutes);
        Assert.Equal(minutes, run.Load("pump").TimeShed.Minutes(), Minutes);
        Assert.Contains(run.Events, item => item.Kind == EventKind.Step && item.What.StartsWith("pump shed (bus below 12.4 V", StringComparison.Ordinal));
    }

    [Fact]
    public void When_BusBelowFromTheStart_CountsFromZero()
    {
        var scenario = Ramp.Standing(12, Amperes("pump", "bus", 2));

        Assert.Equal(1.5, scenario.Run(Case(When("bus", 12.4, 90, (ActionVerb.Shed, "pump")))).Load("pump").TimeShed.Minutes(), Minutes);
        Assert.Equal(0, scenario.Run(Case(When("bus", 12.4, 0, (ActionVerb.Shed, "pump")))).Load("pump").TimeShed.Minutes());
    }

    [Fact]
    public void When_AtZeroTogetherWithAStep_SeesWhatTheStepLeft()
    {
        // Alternator above the threshold before the failure at zero, below it after.
        var scenario = Ramp.Standing(12, Amperes("pump", "bus", 2)) with { Alternators = [Alternator("alternator", "bus", 14, 10, 40)] };

        var run = scenario.Run(Case(At(0, (ActionVerb.Fail, "alternator")), When("bus", 12.4, 30, (ActionVerb.Shed, "pump"))));

        Assert.Equal(0.5, run.Load("pump").TimeShed.Minutes(), Minutes);
    }

    [Theory]
    [InlineData(12.46, 13)] // above the threshold plus 0.05 V: it starts over at 12 min
    [InlineData(12.44, 11)] // inside the hysteresis: the first fall counts on
    public void When_BusComesBack_StartsOverOnlyBeyondTheHysteresis(double between, double minutes)
    {
        var scenario = Ramp.Standing(12.3, Amperes("pump", "bus", 1e-3)) with
        {
            Alternators = [Alternator("alternator", "bus", 14, 10, 40), Alternator("weak", "bus", between, 1e-3, 40) with { IsOn = false }],
        };

        var run = scenario.Run(Case(
            At(10, (ActionVerb.Fail, "alternator")),
            At(10.5, (ActionVerb.Connect, "weak")),
            At(12, (ActionVerb.Shed, "weak")),
            When("bus", 12.4, 60, (ActionVerb.Shed, "pump"))));

        Assert.Equal(minutes, run.Load("pump").TimeShed.Minutes(), Minutes);
    }

    [Theory]
    [InlineData(SystemVoltage.Volts14, true)]
    [InlineData(SystemVoltage.Volts28, false)]
    public void Hysteresis_SeventyMillivolts_CountsAsBackAt14VoltsNotAt28(SystemVoltage system, bool back)
    {
        var scenario = Ramp.Standing(23.9, Amperes("pump", "bus", 1e-3)) with
        {
            System = system,
            Buses = [Bus("bus", 24)],
            Alternators = [Alternator("alternator", "bus", 28, 10, 40), Alternator("weak", "bus", 24.07, 1e-3, 40) with { IsOn = false }],
        };

        var run = scenario.Run(Case(At(5, (ActionVerb.Fail, "alternator")), At(10, (ActionVerb.Connect, "weak"))));

        Assert.Equal(5, run.Bus("bus").TimeToCutoff.Minutes(), Minutes);
        Assert.Equal(back ? double.PositiveInfinity : 5, run.Bus("bus").TimeToCutoffForGood.Minutes(), Minutes);
    }

    [Fact]
    public void When_BusNeverFalls_IsAFindingThatNamesBusAndThreshold()
    {
        var run = Ramp.Standing(12.8, Amperes("pump", "bus", 2)).Run(Case(When("bus", 11.5, 60, (ActionVerb.Shed, "pump"))));

        var finding = Assert.Single(run.Findings, item => item.Code == "step-never-fired");
        Assert.Equal("bus", finding.Part);
        Assert.Equal("11.5 V", finding.Value);
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains("pump", finding.Message, StringComparison.Ordinal);
        Assert.Null(run.Recognition);
    }

    [Fact]
    public void When_Fired_NeverFiresAgain()
    {
        var scenario = Ramp.Standing(12, Amperes("pump", "bus", 2)) with { Alternators = [Alternator("alternator", "bus", 14, 10, 40)] };

        var run = scenario.Run(Case(
            At(5, (ActionVerb.Fail, "alternator")),
            When("bus", 12.4, 0, (ActionVerb.Shed, "pump")),
            At(6, (ActionVerb.Restore, "alternator")),
            At(7, (ActionVerb.Connect, "pump")),
            At(8, (ActionVerb.Fail, "alternator"))));

        Assert.Null(run.Load("pump").TimeShed);
        Assert.Single(run.Events, item => item.What.StartsWith("pump shed", StringComparison.Ordinal));
    }

    [Fact]
    public void When_TwoWaitForOneThreshold_ComeInTheOrderWritten()
    {
        var run = Ramp.Standing(12, Amperes("pump", "bus", 2)).Run(Case(
            When("bus", 12.4, 30, (ActionVerb.Shed, "pump")), When("bus", 12.4, 30, (ActionVerb.Connect, "pump"))));

        Assert.Null(run.Load("pump").TimeShed);
    }

    [Fact]
    public void Recognition_IsTheFirstActingStepAfterZero()
    {
        var scenario = Ramp.Standing(12, Amperes("pump", "bus", 2)) with { Alternators = [Alternator("alternator", "bus", 14, 10, 40)] };

        var run = scenario.Run(Case(
            At(0, (ActionVerb.Shed, "pump")), At(3, (ActionVerb.Fail, "alternator")), At(7, (ActionVerb.Connect, "pump")), At(9, (ActionVerb.Shed, "pump"))));

        Assert.Equal(7, run.Recognition.Minutes(), Minutes);
    }
}
