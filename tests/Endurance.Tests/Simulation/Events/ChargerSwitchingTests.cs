using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>A charger that starts above 13 V and stops below 12.6 V of input, between a battery of 12.5 V and a bus of its own.</summary>
public sealed class ChargerSwitchingTests
{
    [Fact]
    public void Charger_AlternatorComingAndGoing_RunsBetweenItsCutInAndCutOut()
    {
        var run = Bench(14).Run(Case(At(5, (ActionVerb.Connect, "alternator")), At(10, (ActionVerb.Fail, "alternator"))));

        Assert.Equal([("charger starts", 5), ("charger stops: input too low", 10)], OfTheCharger(run));
        Assert.Equal(2 * 5, run.Battery("backup").Received.AmpereHours * 60, 1e-3);
    }

    /// <summary>12.8 V lie between cut-out and cut-in: it neither starts there nor stops.</summary>
    [Fact]
    public void Charger_BetweenCutOutAndCutIn_StaysAsItIs()
    {
        var weak = Alternator("weak", "main", 12.8, 1e-3, 4000) with { IsOn = false };
        var scenario = Bench(14);

        var run = (scenario with { Alternators = [.. scenario.Alternators, weak] }).Run(Case(
            At(2, (ActionVerb.Connect, "weak")), At(5, (ActionVerb.Connect, "alternator")), At(10, (ActionVerb.Shed, "alternator")), At(12, (ActionVerb.Shed, "weak"))));

        Assert.Equal([("charger starts", 5), ("charger stops: input too low", 12)], OfTheCharger(run));
    }

    [Theory]
    [InlineData(ActionVerb.Shed, ActionVerb.Connect)]
    [InlineData(ActionVerb.Fail, ActionVerb.Restore)]
    public void Charger_OffForATime_GivesNothingThen(ActionVerb off, ActionVerb on)
    {
        var scenario = Bench(14).For(20);
        scenario = scenario with { Alternators = [scenario.Alternators[0] with { IsOn = true }] };

        var run = scenario.Run(Case(At(5, (off, "charger")), At(12, (on, "charger"))));

        Assert.Equal(2 * (5 + 8), run.Battery("backup").Received.AmpereHours * 60, 1e-3);
        Assert.Equal(2, run.Chargers.Single().HighestCurrent.Amperes, 1e-6);
    }

    /// <summary>It says nothing of starting and stopping while it is off or has failed.</summary>
    [Theory]
    [InlineData(ActionVerb.Shed)]
    [InlineData(ActionVerb.Fail)]
    public void Charger_OffOrFailedWhileItsInputComesAndGoes_IsNotTold(ActionVerb verb)
    {
        var run = Bench(14).Run(Case(At(2, (verb, "charger")), At(5, (ActionVerb.Connect, "alternator")), At(10, (ActionVerb.Fail, "alternator"))));

        Assert.Empty(OfTheCharger(run));
        Assert.Equal(0, run.Battery("backup").Received.AmpereHours, 1e-9);
    }

    /// <summary>Switching it does not repair it, and repairing it does not switch it on.</summary>
    [Theory]
    [InlineData(ActionVerb.Fail, ActionVerb.Connect)]
    [InlineData(ActionVerb.Shed, ActionVerb.Restore)]
    public void Charger_OffByOneVerb_IsNotBroughtBackByTheOther(ActionVerb off, ActionVerb on)
    {
        var run = Bench(14).Run(Case(At(2, (off, "charger")), At(3, (on, "charger")), At(5, (ActionVerb.Connect, "alternator"))));

        Assert.Equal(0, run.Battery("backup").Received.AmpereHours, 1e-9);
    }

    /// <summary>2 A at 13.7 V want 30 W: over 100 mohm and 1 ohm they take its input from 13.5 V to below the cut-out, and so on.</summary>
    [Fact]
    public void Charger_WhoseInputSinksUnderIt_IsReportedAsChatteringWithItsName()
    {
        var bench = Bench(14);
        var scenario = bench with { Batteries = [Ramp.Steady(13.5, bus: "main") with { Resistance = Endurance.Numerics.PiecewiseLinear.Constant(0.6) }, bench.Batteries[1]] };

        var chattering = Assert.Throws<BrokenOffException>(() => scenario.Run());

        Assert.Equal("charger", Assert.Single(chattering.BreakOff.Parts));
    }

    private static IEnumerable<(string What, double Minutes)> OfTheCharger(SimulationResult run) =>
        run.Events.Where(happened => happened is { Part: "charger", Kind: EventKind.Tripped }).Select(happened => (happened.What, Math.Round(happened.Time.Minutes, 6)));

    private static Scenario Bench(double setpoint) => Scenario(1) with
    {
        Buses = [Bus("main"), Bus("spare")],
        Batteries = [Ramp.Steady(12.5, bus: "main"), Ramp.Steady(12, "backup", "spare") with { InitialCharge = 0.5 }],
        Alternators = [Alternator("alternator", "main", setpoint, 1e-3, 4000) with { IsOn = false }],
        Chargers =
        [
            new Charger
            {
                Name = "charger", From = "main", To = "spare", Output = Voltage.FromVolts(13.8), Limit = Current.FromAmperes(2), Efficiency = 0.9,
                Droop = Resistance.FromMilliohms(50), CutIn = Voltage.FromVolts(13), CutOut = Voltage.FromVolts(12.6),
            },
        ],
    };
}
