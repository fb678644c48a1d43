using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Sizing;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>The sample duty cycle of IEEE Std 485 (from memory, unverified), with arithmetic of our own: amperes times minutes, without its capacity factors.</summary>
[Trait("Kind", "Validation")]
public sealed class DutyCycles
{
    /// <summary>320 A to 1 min, 100 A to 30, 280 A to 60, 200 A to 120, 40 A to 179, 120 A to 180: as 40 A throughout and what comes on top.</summary>
    private static Scenario Sample(double ampereHours) => Scenario() with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", ampereHours, 8, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(5))],
        Loads =
        [
            Amperes("throughout", "bus", 40),
            Amperes("first", "bus", 280),
            Amperes("second", "bus", 60) with { IsOn = false },
            Amperes("third", "bus", 240) with { IsOn = false },
            Amperes("fourth", "bus", 160) with { IsOn = false },
            Amperes("last", "bus", 80) with { IsOn = false },
        ],
        FailureCases =
        [
            Case(
                At(1, (ActionVerb.Shed, "first"), (ActionVerb.Connect, "second")),
                At(30, (ActionVerb.Shed, "second"), (ActionVerb.Connect, "third")),
                At(60, (ActionVerb.Shed, "third"), (ActionVerb.Connect, "fourth")),
                At(120, (ActionVerb.Shed, "fourth")),
                At(179, (ActionVerb.Connect, "last"))),
        ],
        Requirements = [new Requirement { Loads = ["throughout"], Endure = Duration.FromMinutes(180) }],
    };

    /// <summary>Running sums of 5.333, 48.333, 140, 200, 39.333 and 2 Ah.</summary>
    [Theory]
    [InlineData(1, 5.3333)]
    [InlineData(30, 53.6667)]
    [InlineData(60, 193.6667)]
    [InlineData(120, 393.6667)]
    [InlineData(179, 433)]
    [InlineData(180, 435)]
    public void DutyCycle_ToTheEndOfEachPeriod_TakesItsAmpereHours(double minutes, double ampereHours)
    {
        var scenario = Sample(1000) with { Horizon = Duration.FromMinutes(minutes) };

        Assert.Equal(ampereHours, scenario.Run(scenario.FailureCases[0]).Battery("battery").Delivered.AmpereHours, 0.001);
    }

    /// <summary>Without an exponent the ampere-hours are the size.</summary>
    [Fact]
    public void DutyCycle_Sized_NeedsItsAmpereHours()
    {
        var result = SizingStudy.Capacity(Sample(300), "battery", keepResistance: true, new SimulationOptions());

        Assert.Equal(435, Charge.FromCoulombs(result.Limit!.Value).AmpereHours, 435 * 0.001);
    }
}
