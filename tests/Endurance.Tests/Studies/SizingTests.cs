using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Sizing;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class SizingTests
{
    /// <summary>5 min at 18 A, 30 at 9 A, 10 at 14 A, 20-hour rating, k 1.2 (assumed): C = (H^(k-1)/h sum t I^k)^(1/k) = 14.51 Ah new, 17.48 at 80 % health, 21.05 with a further cold factor of 0.80.</summary>
    [Theory]
    [Trait("Kind", "Validation")]
    [InlineData(1, 1, 14.51)]
    [InlineData(0.8, 1, 17.48)]
    [InlineData(0.8, 0.8, 21.05)]
    public void Capacity_ThreeCurrents_IsTheClosedForm(double health, double cold, double ampereHours)
    {
        var result = SizingStudy.Capacity(ThreeCurrents(10, health, cold), "battery", keepResistance: false, new SimulationOptions());

        Assert.Equal(ampereHours, Charge.FromCoulombs(result.Limit!.Value).AmpereHours, 0.01);
        Assert.False(result.IsNotMonotonic);
        Assert.Equal(25, result.Curve.Length);
    }

    [Fact]
    public void Capacity_RunAtTheAnswer_JustMeetsTheRequirement()
    {
        var result = SizingStudy.Capacity(ThreeCurrents(10, 1, 1), "battery", keepResistance: false, new SimulationOptions());

        Assert.Equal(45, result.AtLimit!.Endurance.Minutes(), 45 * 0.001);
    }

    [Fact]
    public void Health_AtTheAnswer_IsTheRatioOfTheCapacities()
    {
        // By the closed form the minutes are in proportion to health: 14.51 Ah to the power of 1.2 over that of 20 Ah.
        var result = SizingStudy.Health(ThreeCurrents(20, 1, 1), "battery", new SimulationOptions());

        Assert.Equal(Math.Pow(14.51 / 20, 1.2), result.Limit!.Value, 0.001);
    }

    [Fact]
    public void ExtraLoad_AtTheAnswer_FillsTheClosedForm()
    {
        var scenario = ThreeCurrents(20, 1, 1);
        var result = SizingStudy.ExtraLoad(scenario, "bus", new SimulationOptions());
        var x = result.Limit!.Value;

        // sum t (I + x)^k H^(k-1) = C^k, in hours.
        var sum = (5 * Math.Pow(18 + x, 1.2)) + (30 * Math.Pow(9 + x, 1.2)) + (10 * Math.Pow(14 + x, 1.2));
        Assert.Equal(Math.Pow(20, 1.2), sum / 60 * Math.Pow(20, 0.2), 0.01);
    }

    [Fact]
    public void Capacity_NothingThatIsTriedPasses_SaysSo()
    {
        var impossible = ThreeCurrents(10, 1, 1) with { Loads = [Amperes("a", "bus", 18, 13)], FailureCases = [Case()], Requirements = [new Requirement { Loads = ["a"], Endure = Duration.FromMinutes(5) }] };

        var result = SizingStudy.Capacity(impossible, "battery", keepResistance: false, new SimulationOptions());

        Assert.Null(result.Limit);
        Assert.All(result.Curve, trial => Assert.False(trial.Passes));
    }

    private static Scenario ThreeCurrents(double ampereHours, double health, double cold) => Scenario() with
    {
        Buses = [Bus("bus")],
        Batteries =
        [
            Battery("battery", "bus", ampereHours, 20, 1.2, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(0.01)) with
            {
                Health = health, CapacityFactor = cold,
            },
        ],
        Loads = [Amperes("a", "bus", 9), Amperes("b", "bus", 9), Amperes("c", "bus", 5) with { IsOn = false }],
        FailureCases = [Case(At(5, (ActionVerb.Shed, "b")), At(35, (ActionVerb.Connect, "c")))],
        Requirements = [new Requirement { Loads = ["a"], Endure = Duration.FromMinutes(45) }],
    };
}
