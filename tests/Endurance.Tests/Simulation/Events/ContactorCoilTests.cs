using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>A contactor between a steady battery and a bus with 4 A of load; its coil takes 1 A to hold and 3 A to pull in.</summary>
public sealed class ContactorCoilTests
{
    /// <summary>Closed at a voltage below the 8 V at which it moves the coil draws its pull-in current, the load nothing; above it the coil holds with 1 A.</summary>
    [Theory]
    [InlineData(7.9, 3.0, 3)]
    [InlineData(7.9, null, 1)]
    [InlineData(8.1, 3.0, 5)]
    [InlineData(12, 3.0, 5)]
    public void Coil_ClosedAboveOrBelowItsPullIn_DrawsWhatItsArmatureAsks(double volts, double? pullIn, double amperes)
    {
        var scenario = Bench(volts, Relay with
        {
            IsClosed = false,
            PullInCurrent = pullIn is { } value ? Current.FromAmperes(value) : null,
            PullsInAbove = Voltage.FromVolts(8),
        }).For(10);

        var run = scenario.Run(Case(At(5, (ActionVerb.Close, "feed"))));

        Assert.Equal(0, run.Battery("battery").StartCurrent.Amperes, 1e-9);
        Assert.Equal(amperes * 5, run.Battery("battery").Delivered.AmpereHours * 60, 1e-4);
    }

    /// <summary>A contactor that is drawn closed has been pulled in by a better voltage than it starts at.</summary>
    [Fact]
    public void Coil_ClosedFromTheStart_HoldsBelowItsPullIn()
    {
        var run = Bench(7.9, Relay with { PullInCurrent = Current.FromAmperes(3), PullsInAbove = Voltage.FromVolts(8), DropsOutBelow = Voltage.FromVolts(4) }).Run();

        Assert.Equal(5, run.Battery("battery").StartCurrent.Amperes, 1e-6);
    }

    [Theory]
    [InlineData(false, true, 5)] // opened by its spring, closed by its coil
    [InlineData(false, false, 0)]
    [InlineData(true, true, 4)] // closed by its spring, opened by its coil
    [InlineData(true, false, 1)]
    public void Coil_OfEitherRestPosition_DrawsWhereItWorksAgainstTheSpring(bool normallyClosed, bool closed, double amperes)
    {
        var run = Bench(12, Relay with { IsNormallyClosed = normallyClosed, IsClosed = closed }).Run();

        Assert.Equal(amperes, run.Battery("battery").StartCurrent.Amperes, 1e-6);
        Assert.Equal(closed, run.Bus("far").StartVoltage.Volts > 11);
    }

    [Fact]
    public void Coil_OnABusOfItsOwn_DropsOutWithThatBus()
    {
        var scenario = Bench(12, Relay with { CoilBus = "control", PullsInAbove = Voltage.FromVolts(8), DropsOutBelow = Voltage.FromVolts(4) });
        scenario = scenario with
        {
            Buses = [.. scenario.Buses, Bus("control")],
            Batteries = [.. scenario.Batteries, Ramp.Steady(12, "small", "control")],
        };

        var run = scenario.Run(Case(At(5, (ActionVerb.Fail, "small")), At(9, (ActionVerb.Restore, "small"))));

        Assert.Equal(1, run.Battery("small").StartCurrent.Amperes, 1e-6);
        Assert.Equal(5, run.Load("load").TimePowered.Minutes(), 1e-6);
        Assert.Null(run.Load("load").TimeLostForGood);
        Assert.Equal([5, 9], run.Events.Where(happened => happened.What.StartsWith("feed contactor ", StringComparison.Ordinal)).Select(happened => happened.Time.Minutes));
    }

    /// <summary>Under 11 A in all the bus reads 12.89 V less 0.055 V a minute: 11.89 V, where the coil lets go, after 18.18 min.</summary>
    [Fact]
    public void Coil_BusFallingBelowItsDropOut_LetsGoAtThatMinute()
    {
        var scenario = Bench(12, Relay with { PullsInAbove = Voltage.FromVolts(12.5), DropsOutBelow = Voltage.FromVolts(11.89) }, amperes: 10) with { Batteries = [Ramp.FallingBattery with { Bus = "near" }] };

        var run = scenario.Run();

        Assert.Equal(1 / 0.055, run.Load("load").TimePowered.Minutes(), 1e-3);
        Assert.Equal("feed contactor dropped out: 11.89 V at its coil", Assert.Single(run.Events, happened => happened.Part == "feed").What);
    }

    /// <summary>Switched off it is released, which is no drop-out for want of voltage.</summary>
    [Fact]
    public void Coil_SwitchedOffAndOn_IsReleasedAndPullsInAgain()
    {
        var run = Bench(12, Relay with { PullsInAbove = Voltage.FromVolts(8), DropsOutBelow = Voltage.FromVolts(4) }).Run(
            Case(At(2, (ActionVerb.Open, "feed")), At(4, (ActionVerb.Close, "feed"))));

        Assert.Equal(
            [("feed contactor released", 2.0), ("feed contactor pulled in", 4.0)],
            run.Events.Where(happened => happened.Kind == EventKind.Tripped).Select(happened => (happened.What, Math.Round(happened.Time.Minutes, 9))));
    }

    /// <summary>10 A through 100 mohm take 1 V from a coil that pulls in above 12.5 V and drops out below 12 V of 12.9 V.</summary>
    [Fact]
    public void Coil_WhoseLoadTakesItsVoltageAway_IsReportedAsChatteringWithTheFeedsName()
    {
        var scenario = Bench(12.9, Relay with { IsClosed = false, PullsInAbove = Voltage.FromVolts(12.5), DropsOutBelow = Voltage.FromVolts(12) }, amperes: 10) with
        {
            Batteries = [Ramp.Steady(12.9, bus: "near") with { Resistance = Endurance.Numerics.PiecewiseLinear.Constant(0.1) }],
        };

        var chattering = Assert.Throws<BrokenOffException>(() => scenario.Run(Case(At(3, (ActionVerb.Close, "feed")))));

        Assert.Equal("feed", Assert.Single(chattering.BreakOff.Parts));
    }

    private static Contactor Relay => new() { IsClosed = true, Coil = new ConstantCurrent(Current.FromAmperes(1)) };

    private static Scenario Bench(double volts, Contactor contactor, double amperes = 4) => Scenario(1) with
    {
        Buses = [Bus("near"), Bus("far")],
        Batteries = [Ramp.Steady(volts, bus: "near")],
        Feeds = [Feed("feed", "near", "far", 1) with { Contactor = contactor }],
        Loads = [Amperes("load", "far", amperes)],
    };
}
