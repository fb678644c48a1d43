using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Adjustment;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;
using Endurance.Studies.Sizing;
using Endurance.Studies.Spread;
using Endurance.Studies.Sweeps;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

/// <summary>10 A through 100 mohm pull the display below the minimum from which it restarts at once, as soon as it lets go.</summary>
/// <remarks>EMF 13 V to 12 V over 20 Ah without Peukert: under 10 A the bus reads 12 V less 1 V in 120 min, 11.6 V at 48 min.</remarks>
public sealed class ChatteringTests
{
    private const double Begins = 48;

    private static Scenario Flickering => Scenario(2) with
    {
        Buses = [Bus("bus", 9)],
        Batteries = [Battery("battery", "bus", 20, 20, 1, Table((0, 12), (100, 13)), PiecewiseLinear.Constant(100))],
        Loads = [Amperes("display", "bus", 10, 11.6) with { Restart = Voltage.FromVolts(11.7) }, Amperes("radio", "bus", 1e-6, 9) with { IsEssential = false }],
        FailureCases = [Case(), Case(At(5, (ActionVerb.Shed, "display"))) with { Name = "shed" }],
        Requirements = [new Requirement { Loads = ["radio"], Endure = Duration.FromMinutes(30) }],
    };

    [Fact]
    public void Case_ThatChatters_FailsWithItsMinutesAndLeavesTheOthersAlone()
    {
        var cases = FailureCaseStudy.Run(Flickering, Flickering.FailureCases, new SimulationOptions());

        Assert.Equal([Verdict.Fail, Verdict.Pass], cases.Select(result => result.Verdict));
        Assert.Equal(Begins, cases[0].Endurance.Minutes(), 0.001);
        Assert.Equal("display", cases[0].LimitedBy);
        Assert.Equal(["display"], cases[0].BreakOff!.Parts.AsEnumerable());
        Assert.Null(cases[1].BreakOff);
    }

    [Fact]
    public void Case_ThatChatters_HasNoLoadThatLastsLonger()
    {
        var result = FailureCaseStudy.Run(Flickering, Flickering.FailureCases, new SimulationOptions())[0];

        Assert.All(result.Run.Loads, load => Assert.Equal(Begins, load.TimePowered.Minutes(), 0.001));
        Assert.Equal(Begins, result.Run.Bus("bus").TimeToCutoff.Minutes(), 0.001);
    }

    [Fact]
    public void Case_ThatChatters_IsFoundAsAFaultOfTheScenarioAndNothingElse()
    {
        var found = Assert.Single(FailureCaseStudy.Run(Flickering, Flickering.FailureCases, new SimulationOptions())[0].Findings);

        Assert.Equal(("chattering", Endurance.Findings.Severity.Error, "case", "48.0 min"), (found.Code, found.Severity, found.Part, found.Value));
        Assert.Equal(
            "display switches itself on and off without end at 48.0 min. The run breaks off there, nothing counts as powered from then on, and the case fails whatever was met before. "
            + "Give the load a higher restart voltage or a start-up time, or move a threshold.",
            found.Message);
    }

    [Fact]
    public void Case_ThatChattersAtZero_FailsAtZeroWithItsVolts()
    {
        var result = (Flickering with { Batteries = [Flickering.Batteries[0] with { InitialCharge = 0.5 }] }).Judge();

        Assert.Equal(0, result.Endurance.Minutes());
        Assert.Equal(Verdict.Fail, result.Verdict);
        Assert.InRange(result.Run.Bus("bus").StartVoltage.Volts, 11.5 - 1e-6, 12.5);
    }

    [Fact]
    public void Case_ThatChattersWithNothingRequired_FailsAllTheSame() =>
        Assert.Equal(Verdict.Fail, (Flickering with { Requirements = [] }).Judge().Verdict);

    [Fact]
    public void Spread_SamplesThatChatter_AreCountedAndMeetNothing()
    {
        // At a constant current the instant is in proportion to health.
        var scenario = Flickering with { Tolerances = [new Tolerance("battery.health", new Uniform(0.2, 1))] };

        var spread = SpreadStudy.Run(scenario, new SpreadOptions { Samples = 40 });

        Assert.Equal(40, spread[0].BrokenOff);
        Assert.Equal(["display"], Assert.Single(spread[0].BreakOffs).First.Parts.AsEnumerable());
        Assert.Equal(0, spread[0].Requirements[0].Met);
        Assert.Equal(Begins * 0.6, spread[0].Seconds.Average() / 60, 0.1);
        Assert.Empty(spread[1].BreakOffs);
        Assert.Equal(40, spread[1].Requirements[0].Met);
    }

    [Fact]
    public void Sweep_ValuesThatChatter_FailAndTheOthersStand()
    {
        var current = AdjustableQuantities.Find(Flickering, "display.current")!;

        var points = SweepStudy.Run(Flickering, current, 2, 10, 2, new SimulationOptions());

        Assert.Equal([false, true], points.Select(point => point.Cases[0].BreakOff is not null));
        Assert.Equal([Verdict.Pass, Verdict.Fail], points.Select(point => point.Cases[0].Verdict));
    }

    [Fact]
    public void Size_TrialsThatChatter_CountAsFailing()
    {
        var result = SizingStudy.Capacity(Flickering, "battery", keepResistance: true, new SimulationOptions());

        var chattering = result.Curve.Where(trial => trial.BreakOff is not null).ToArray();
        Assert.Equal(chattering.Length, result.BrokenOff);
        Assert.NotEmpty(chattering);
        Assert.All(chattering, trial => Assert.False(trial.Passes));
        // Flickering begins after the two hours simulated once 0.4 of the capacity lasts as long at 10 A.
        Assert.Equal(50, Charge.FromCoulombs(result.Limit!.Value).AmpereHours, 0.1);
    }

    [Fact]
    public void Failure_ThatMakesPartsChatter_FailsWithItsMinutes()
    {
        var row = Assert.Single(SingleFailureStudy.Run(Flickering, new SingleFailureOptions()), row => row is { Mode: "not done", Case: "shed" });

        Assert.Equal(Begins, row.Endurance.Minutes(), 0.01);
        Assert.Equal(Verdict.Fail, row.Verdict);
        Assert.Equal(["display"], row.BreakOff!.Parts.AsEnumerable());
    }
}
