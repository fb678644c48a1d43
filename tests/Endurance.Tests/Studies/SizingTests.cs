using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Reports;
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

    /// <summary>10 Ah without Peukert; 10 A until the shedding, 5 A after it: 10 t + 5 (90 - t) = 600 A min gives t = 30 min, 25 min later than written.</summary>
    [Theory]
    [InlineData(SizingFind.Delay)]
    [InlineData(SizingFind.ShedTime)]
    public void LatestStep_WrittenBackByHand_JustMeetsTheRequirement(SizingFind find)
    {
        var answer = SizingStudy.Answer(ShedAt(5), new SizingQuestion { Find = find, Subject = "" }, new SimulationOptions());

        Assert.Equal(25, answer.Limit.Limit!.Value / 60, 0.01);
        Assert.Equal(90, ShedAt(5 + (answer.Limit.Limit.Value / 60)).JudgeFirst().Endurance.Minutes(), 90 * 0.001);
        Assert.False(answer.Limit.IsNotMonotonic);
    }

    /// <summary>A step that waits for the bus is delayed by its own time: 12 V less 0.5 V at 10 A are below 11.6 V at once.</summary>
    [Fact]
    public void Delay_OfAStepThatWaits_LengthensItsWaiting()
    {
        var waits = ShedAt(5) with { FailureCases = [Case(When("bus", 11.6, 60, (ActionVerb.Shed, "heat")))] };
        var written = waits with { FailureCases = [Case(When("bus", 11.6, 30 * 60, (ActionVerb.Shed, "heat")))] };

        var result = SizingStudy.Delay(waits, new SimulationOptions());

        Assert.Equal(29, result.Limit!.Value / 60, 0.01);
        Assert.Equal(90, written.JudgeFirst().Endurance.Minutes(), 90 * 0.001);
    }

    /// <summary>The heater lets go at once on a battery so small that 22 A pull 1.1 V, below 20 Ah: then 2 A last long. On a larger one it draws on, and 22 A for 120 min take 44 Ah.</summary>
    [Fact]
    public void Capacity_SmallBatteryThatDropsAHeavyLoad_TurnsBackAndSaysSo()
    {
        var scenario = Scenario(horizonHours: 6) with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 20, 20, 1, PiecewiseLinear.Constant(13), PiecewiseLinear.Constant(50))],
            Loads = [Amperes("display", "bus", 2, 9), Amperes("heater", "bus", 20, 11.9) with { IsEssential = false }],
            FailureCases = [Case()],
            Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(120) }],
        };

        var answer = SizingStudy.Answer(scenario, new SizingQuestion { Find = SizingFind.Capacity, Subject = "battery" }, new SimulationOptions());

        Assert.Equal(44, Charge.FromCoulombs(answer.Limit.Limit!.Value).AmpereHours, 0.01);
        Assert.True(answer.Limit.IsNotMonotonic);
        Assert.Contains(answer.Limit.Curve, trial => trial.Passes && Charge.FromCoulombs(trial.Value).AmpereHours < 19);
        Assert.DoesNotContain(answer.Limit.Curve, trial => trial.Passes && Charge.FromCoulombs(trial.Value).AmpereHours is > 21 and < 44);
        Assert.Contains("The answer turns back", MarkdownReport.Write(SizingReport.Describe(scenario, answer, withOffers: false)), StringComparison.Ordinal);
    }

    /// <summary>90 min at 10 A and 5 A as shed at 5 min take 475 A min, 7.92 Ah; rates count for nothing without Peukert.</summary>
    [Fact]
    public void Offers_EachInPlaceOfTheBattery_PassFromTheSizeThatIsNeeded()
    {
        BatteryOnOffer Offer(double ampereHours) => new($"{ampereHours} Ah", Charge.FromAmpereHours(ampereHours), Duration.FromHours(20), null);
        var scenario = ShedAt(5) with { BatteriesOnOffer = [Offer(9), Offer(7.8), Offer(8), Offer(5)] };

        var trials = SizingStudy.Offers(scenario, "battery", new SimulationOptions());

        Assert.Equal([true, false, true, false], trials.Select(trial => trial.Passes));
        Assert.Contains("the smallest that passes is 8 Ah", MarkdownReport.Write(SizingReport.Describe(
            scenario, SizingStudy.Answer(scenario, new SizingQuestion { Find = SizingFind.Capacity, Subject = "battery" }, new SimulationOptions()), withOffers: true)), StringComparison.Ordinal);
    }

    /// <summary>20 Ah at 20 h and k 1.2 are 20^(1/1.2) = 12.14 Ah at 1 h: the same battery in other words, its resistance with it.</summary>
    [Fact]
    public void Offers_TheSameBatteryRatedAtAnotherHour_IsTheSameBattery()
    {
        var scenario = ThreeCurrents(20, 1, 1);
        scenario = scenario with
        {
            Batteries = [scenario.Batteries[0] with { Resistance = PiecewiseLinear.Constant(0.1) }],
            Loads = [Watts("a", "bus", 100)],
            FailureCases = [Case()],
            BatteriesOnOffer =
            [
                new("20 h", Charge.FromAmpereHours(20), Duration.FromHours(20), null),
                new("1 h", Charge.FromAmpereHours(Math.Pow(20, 1 / 1.2)), Duration.FromHours(1), null),
            ],
        };

        var trials = SizingStudy.Offers(scenario, "battery", new SimulationOptions());

        Assert.Equal(scenario.JudgeFirst().Endurance.Minutes(), trials[0].Endurance.Minutes(), 1e-6);
        Assert.Equal(trials[0].Endurance.Minutes(), trials[1].Endurance.Minutes(), 1e-6);
    }

    [Fact]
    public void Capacity_NothingThatIsTriedPasses_SaysSo()
    {
        var impossible = ThreeCurrents(10, 1, 1) with { Loads = [Amperes("a", "bus", 18, 13)], FailureCases = [Case()], Requirements = [new Requirement { Loads = ["a"], Endure = Duration.FromMinutes(5) }] };

        var result = SizingStudy.Capacity(impossible, "battery", keepResistance: false, new SimulationOptions());

        Assert.Null(result.Limit);
        Assert.All(result.Curve, trial => Assert.False(trial.Passes));
    }

    private static Scenario ShedAt(double minutes) => Scenario() with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", 10, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(50))],
        Loads = [Amperes("display", "bus", 5), Amperes("heat", "bus", 5) with { IsEssential = false }],
        FailureCases = [Case(At(minutes, (ActionVerb.Shed, "heat")))],
        Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(90) }],
    };

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
