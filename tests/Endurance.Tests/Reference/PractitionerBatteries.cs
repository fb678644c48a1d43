using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;
using static Endurance.Tests.Yaml.BatteryText;

namespace Endurance.Tests.Reference;

/// <summary>Battery questions that builders bring; the answers were computed by the formulas shown, apart from this program.</summary>
[Trait("Kind", "Validation")]
public sealed class PractitionerBatteries
{
    private static readonly PiecewiseLinear Stiff = PiecewiseLinear.Constant(12);
    private static readonly PiecewiseLinear TinyMilliohms = PiecewiseLinear.Constant(0.001);

    /// <summary>30 Ah derated to 75 %: 38 A for 5 min, then 29 A, then 42 A for the last 10 min. Linear 40.5 min; k 1.15 read as a 1-hour rating 39.7, as a 20-hour rating 22.7.</summary>
    [Theory]
    [InlineData(1.0, 1, 40.5)]
    [InlineData(1.15, 1, 39.7)]
    [InlineData(1.15, 20, 22.7)]
    public void AmpereMinuteForm_OfThreePhases_LastsAsComputed(double peukert, double hours, double minutes)
    {
        var scenario = Scenario() with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 30, hours, peukert, Stiff, TinyMilliohms) with { Health = 0.75 }],
            Loads = [Amperes("cruise", "bus", 29), Amperes("to_shed", "bus", 9), Amperes("landing", "bus", 13) with { IsOn = false }],
        };

        var run = scenario.Run(Case(At(5, (ActionVerb.Shed, "to_shed")), At(minutes - 10, (ActionVerb.Connect, "landing"))));

        Assert.Equal(minutes, run.Battery("battery").TimeToExhaustion.Minutes(), 0.06);
    }

    /// <summary>Battery volts on load 12.4 at 0 min, 11.6 at 35, 11.5 at 40, 11.2 at 47, 9.2 at 55, linear between; drops 0.05, 0.35, 0.80 V; display minimum 9.5 and 11.0 V.</summary>
    [Theory]
    [InlineData(50, 9.5, 53.6)]
    [InlineData(350, 9.5, 52.4)]
    [InlineData(800, 9.5, 50.6)]
    [InlineData(50, 11.0, 47.6)]
    [InlineData(350, 11.0, 43.5)]
    [InlineData(800, 11.0, 26.2)]
    public void DropBeforeTheDisplay_CostsTheMinutesComputed(double milliohms, double minimum, double minutes)
    {
        var measured = Table((0, 9.2), (100.0 * 8 / 55, 11.2), (100.0 * 15 / 55, 11.5), (100.0 * 20 / 55, 11.6), (100, 12.4));
        var scenario = Scenario() with
        {
            Buses = [Bus("battery_bus"), Bus("display_bus")],
            Batteries = [Battery("battery", "battery_bus", 1, 55.0 / 60, 1, measured, TinyMilliohms) with { RatedCapacity = Charge.FromAmpereHours(55.0 / 60) }],
            Feeds = [Feed("path", "battery_bus", "display_bus", milliohms)],
            Loads = [Amperes("display", "display_bus", 1, minimum)],
        };

        Assert.Equal(minutes, scenario.Run().Load("display").TimePowered.Minutes(), 0.051);
    }

    /// <summary>16 Ah at 20 h with 15.2 at 10 h, or 10.4 at 1 h: k 1.080 promises 37.1 min at 20 A, k 1.168 only 28.0.</summary>
    [Theory]
    [InlineData("[[20 h, 16 Ah], [10 h, 15.2 Ah]]", 1.080, 37.1)]
    [InlineData("[[20 h, 16 Ah], [1 h, 10.4 Ah]]", 1.168, 28.0)]
    public void ExponentFromAPairOfRates_PredictsAtTwentyAmperes(string ratings, double exponent, double minutes)
    {
        var scenario = Yaml.BatteryText.Scenario($"ratings: {ratings}, {Plain}", "current: 20 A");

        Assert.Equal(exponent, scenario.Batteries[0].PeukertExponent, 5e-4);
        var judged = scenario.Judge();
        Assert.Equal(minutes, judged.Endurance.Minutes(), 0.06);
        Assert.Contains(judged.Findings, finding => finding.Code == "exponent-range");
    }

    /// <summary>5 min at 18 A, 30 at 9 A, 10 at 14 A, k 1.2: C = (H^(k-1)/h sum t I^k)^(1/k) = 14.51 Ah new, 17.48 at 80 % health, 21.05 with a further cold factor of 0.80.</summary>
    [Theory]
    [InlineData(14.51, 1, 1)]
    [InlineData(17.48, 0.8, 1)]
    [InlineData(21.05, 0.8, 0.8)]
    public void SizedCapacity_IsExhaustedAtTheEndOfTheDuty(double ampereHours, double health, double cold)
    {
        var scenario = Scenario() with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", ampereHours, 20, 1.2, Stiff, TinyMilliohms) with { Health = health, CapacityFactor = cold }],
            Loads = [Amperes("first", "bus", 18), Amperes("middle", "bus", 9) with { IsOn = false }, Amperes("last", "bus", 14) with { IsOn = false }],
        };

        var run = scenario.Run(Case(
            At(5, (ActionVerb.Shed, "first"), (ActionVerb.Connect, "middle")),
            At(35, (ActionVerb.Shed, "middle"), (ActionVerb.Connect, "last"))));

        Assert.Equal(45, run.Battery("battery").TimeToExhaustion.Minutes(), 0.02);
    }

    /// <summary>120 min at 25 A is 50 Ah at that rate; at 20 A, k 1.2, 2.61 h; its 20-hour equivalent is 73.4 Ah.</summary>
    [Fact]
    public void ReserveMinutes_AreACapacityAtTwentyFiveAmperes()
    {
        var battery = Yaml.BatteryText.Battery($"reserve: 120 min, peukert: 1.2, {Plain}");

        Assert.Equal(50, battery.RatedCapacity.AmpereHours, 9);
        Assert.Equal(2.61, battery.LifetimeAt(Current.FromAmperes(20)).Hours, 0.005);
        Assert.Equal(73.4, battery.LowestPeukertCurrent.Amperes * 20, 0.05);
        Assert.Equal(20, battery.LifetimeAt(battery.LowestPeukertCurrent).Hours, 9);
    }
}
