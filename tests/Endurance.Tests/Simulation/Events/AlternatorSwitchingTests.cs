using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>Alternators at idle, with an over-voltage relay and with a field, over a steady battery of 12.5 V behind 10 mohm.</summary>
public sealed class AlternatorSwitchingTests
{
    /// <summary>20 A of load from an alternator that gives 14 A at idle leave 6 A to the battery for five minutes; at cruise it gives all.</summary>
    [Theory]
    [InlineData(14.0, "engine", 6)]
    [InlineData(null, "engine", 0)] // no limit at idle: as rated
    [InlineData(14.0, "other", 0)] // another engine idles
    public void Idle_UntilCruise_LeavesWhatTheIdleLimitDoesNotGiveToTheBattery(double? limit, string idling, double amperes)
    {
        var scenario = Ramp.Standing(12.5, Amperes("load", "bus", 20)).For(20) with
        {
            Alternators =
            [
                Alternator("alternator", "bus", 14, 10, 40) with { DrivenBy = "engine", LimitIdle = limit is { } value ? Current.FromAmperes(value) : null },
                Alternator("second", "bus", 13, 10, 1) with { DrivenBy = "other", IsOn = false },
            ],
        };

        var run = scenario.Run(Case(At(5, (ActionVerb.Idle, idling)), At(10, (ActionVerb.Cruise, idling))));

        Assert.Equal(amperes * 5, run.Battery("battery").Delivered.AmpereHours * 60, 1e-4);
        Assert.Equal(amperes, run.Battery("battery").HighestCurrent.Amperes, 1e-9);
    }

    /// <summary>Without the battery the bus rises to the set-point less 10 A through the droop of 10 mohm.</summary>
    [Theory]
    [InlineData(16.2, true)]
    [InlineData(16.0, false)]
    public void OverVoltageRelay_BusRisingWithoutItsBattery_TakesTheAlternatorOff(double setpoint, bool trips)
    {
        var scenario = Ramp.Standing(12.5, Amperes("load", "bus", 10, 9)).For(20) with
        {
            Alternators = [Alternator("alternator", "bus", setpoint, 10, 60) with { TripsAbove = Voltage.FromVolts(16) }],
        };

        var run = scenario.Run(Case(At(5, (ActionVerb.Fail, "battery"))));

        Assert.Equal(trips ? 5 : null, run.Load("load").TimePowered?.Minutes);
        Assert.Equal(trips, run.Events.Any(happened => happened.What == "alternator taken off by its over-voltage relay"));
        Assert.Equal(trips ? LossReason.BusDead : null, run.Load("load").LostBecause); // no feed opened: as where the alternator fails
    }

    /// <summary>Back with its battery the bus is no longer too high, yet the relay holds until the alternator is restored.</summary>
    [Fact]
    public void OverVoltageRelay_BatteryBack_HoldsUntilTheAlternatorIsRestored()
    {
        var scenario = Ramp.Standing(12.5, Amperes("load", "bus", 10)).For(20) with
        {
            Alternators = [Alternator("alternator", "bus", 16.2, 10, 400) with { TripsAbove = Voltage.FromVolts(16) }],
        };

        var trace = scenario.Run(
            Case(At(5, (ActionVerb.Fail, "battery")), At(8, (ActionVerb.Restore, "battery")), At(12, (ActionVerb.Restore, "alternator"))),
            new SimulationOptions { SampleInterval = Duration.FromMinutes(0.5) }).Trace!;

        Assert.Equal(0, VoltsAt(trace, 6), 1e-9);
        Assert.Equal(12.4, VoltsAt(trace, 10), 1e-6);
        Assert.Equal((12.5 + 16.2 - 0.1) / 2, VoltsAt(trace, 15), 1e-6);
    }

    /// <summary>The field of 2.5 A is drawn while its switch and the alternator's are on, also after the alternator has failed.</summary>
    [Theory]
    [InlineData(true, true, ActionVerb.Fail, 7.5)]
    [InlineData(true, true, ActionVerb.Shed, 5)]
    [InlineData(false, true, ActionVerb.Fail, 5)]
    [InlineData(true, false, ActionVerb.Fail, 5)]
    public void Field_OfAnAlternatorThatGivesNothing_IsDrawnWhileItsSwitchesAreOn(bool fieldOn, bool alternatorOn, ActionVerb verb, double amperes)
    {
        var scenario = Ramp.Standing(12.5, Amperes("load", "bus", 5)) with
        {
            Alternators = [Excited(fieldOn) with { IsOn = alternatorOn }],
        };

        Assert.Equal(amperes, scenario.Run(Case(At(0, (verb, "alternator")))).Battery("battery").StartCurrent.Amperes, 1e-9);
    }

    /// <summary>14 V behind 10 mohm against 12.5 V behind 10 mohm with 7.5 A of load and field.</summary>
    [Theory]
    [InlineData(true, 13.2125)]
    [InlineData(false, 12.45)]
    public void Field_Off_LeavesTheAlternatorWithoutOutput(bool fieldOn, double volts)
    {
        var scenario = Ramp.Standing(12.5, Amperes("load", "bus", 5)) with { Alternators = [Excited(fieldOn)] };

        Assert.Equal(volts, scenario.Run().Bus("bus").StartVoltage.Volts, 1e-9);
    }

    private static Alternator Excited(bool isOn) => Alternator("alternator", "bus", 14, 10, 400) with
    {
        Field = new AlternatorField { Bus = "bus", Current = Current.FromAmperes(2.5), IsOn = isOn },
    };

    private static double VoltsAt(Trace trace, double minutes) => trace.BusVolts[0].Values[trace.Seconds.IndexOf(minutes * 60)];
}
