using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>A pump of 2 A that draws 20 A for its first 30 s, on a battery of 12.5 V; ampere-minutes are counted at the battery.</summary>
public sealed class InrushTests
{
    [Fact]
    public void Inrush_LoadConnected_IsDrawnForItsTimeAndThenTheSteadyCurrent()
    {
        var run = Ramp.Standing(12.5, Pump().Off()).For(10).Run(Case(At(5, (ActionVerb.Connect, "pump"))));

        Assert.Equal((20 * 0.5) + (2 * 4.5), AmpereMinutes(run), 1e-4);
        Assert.Equal(20, run.Battery("battery").HighestCurrent.Amperes, 1e-9);
    }

    [Fact]
    public void Inrush_LoadOnFromTheStart_HasLongPassed()
    {
        var run = Ramp.Standing(12.5, Pump()).For(10).Run();

        Assert.Equal(2 * 10, AmpereMinutes(run), 1e-4);
    }

    [Fact]
    public void Inrush_SwitchedOffInItsMiddle_BeginsAnewWhenConnectedAgain()
    {
        var run = Ramp.Standing(12.5, Pump().Off()).For(3).Run(
            Case(At(1, (ActionVerb.Connect, "pump")), At(1.25, (ActionVerb.Shed, "pump")), At(2, (ActionVerb.Connect, "pump"))));

        Assert.Equal((20 * 0.25) + (20 * 0.5) + (2 * 0.5), AmpereMinutes(run), 1e-4);
    }

    [Fact]
    public void Inrush_LoadThatComesBackAfterADip_IsDrawnAgain()
    {
        var pump = Pump() with { Minimum = Voltage.FromVolts(11), Restart = Voltage.FromVolts(12) };

        var run = Ramp.Standing(12.5, pump).For(10).Run(Case(At(5, (ActionVerb.Fail, "battery")), At(8, (ActionVerb.Restore, "battery"))));

        Assert.Equal((2 * 5) + (20 * 0.5) + (2 * 1.5), AmpereMinutes(run), 1e-4);
    }

    /// <summary>12.5 V behind 100 mohm: 21 A of pump and radio leave 10.4 V, below the 11 V of the radio; 3 A would leave 12.2 V.</summary>
    [Theory]
    [InlineData(20, true)]
    [InlineData(2, false)]
    public void Inrush_ThatSinksTheBus_DropsAnotherLoadAtThatMinute(double inrush, bool drops)
    {
        var scenario = Ramp.Standing(12.5, Pump(inrush).Off(), Amperes("radio", "bus", 1, 11)) with
        {
            Batteries = [Ramp.Steady(12.5) with { Resistance = PiecewiseLinear.Constant(0.1) }],
        };

        var run = scenario.For(10).Run(Case(At(5, (ActionVerb.Connect, "pump"))));

        Assert.Equal(drops ? 5 : null, run.Load("radio").TimePowered?.Minutes);
        Assert.Null(run.Load("pump").TimePowered);
    }

    [Fact]
    public void Inrush_OfALoadThatIsOnAlready_DoesNotComeAgain() =>
        Assert.Equal(2 * 10, AmpereMinutes(Ramp.Standing(12.5, Pump()).For(10).Run(Case(At(5, (ActionVerb.Connect, "pump"))))), 1e-4);

    private static Load Pump(double inrush = 20) => Amperes("pump", "bus", 2) with { Inrush = new Inrush(Current.FromAmperes(inrush), Duration.FromSeconds(30)) };

    private static double AmpereMinutes(SimulationResult run) => run.Battery("battery").Delivered.AmpereHours * 60;
}
