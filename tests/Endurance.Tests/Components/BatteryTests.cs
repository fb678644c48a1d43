using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Components;

public sealed class BatteryTests
{
    [Theory]
    [InlineData(18, 20, 1.15, 6)]
    [InlineData(18, 20, 1.15, 40)]
    [InlineData(30, 1, 1.2, 29)]
    [InlineData(7.5, 5, 1, 7.5)]
    public void LifetimeAt_CurrentAboveTheTwentyHourCurrent_FollowsPeukertFromTheRatedPoint(double capacity, double hours, double k, double amperes)
    {
        var battery = Of(capacity, hours, k) with { Health = 0.8, CapacityFactor = 0.9 };

        var expected = hours * 0.72 * Math.Pow(capacity / hours / amperes, k);

        Assert.Equal(expected, battery.LifetimeAt(Current.FromAmperes(amperes)).Hours, expected * 1e-12);
    }

    [Theory]
    [Trait("Kind", "Validation")]
    [InlineData(100, 1.2, 5, 20)] // Rated at 20 h, its own current must last exactly 20 h: the form 100/5^1.2 = 14.5 h takes it as rated at 1 A.
    [InlineData(200, 1.2, 10, 20)]
    [InlineData(200, 1.2, 5, 40)] // Below the 20-hour current there is no bonus.
    public void LifetimeAt_TwentyHourRating_IsKeyedToTheRatedHours(double capacity, double k, double amperes, double hours) =>
        Assert.Equal(hours, Of(capacity, 20, k).LifetimeAt(Current.FromAmperes(amperes)).Hours, 1e-9);

    [Fact]
    public void LowestPeukertCurrent_RatingFasterThanTwentyHours_IsTheCurrentThatLastsTwentyHours()
    {
        var battery = Of(10, 1, 1.2);

        Assert.Equal(20, battery.LifetimeAt(battery.LowestPeukertCurrent).Hours, 1e-9);
        Assert.Equal(10 * Math.Pow(1 / 20.0, 1 / 1.2), battery.LowestPeukertCurrent.Amperes, 1e-12);
    }

    [Fact]
    public void LowestPeukertCurrent_RatingSlowerThanTwentyHours_IsTheRatedCurrent() =>
        Assert.Equal(0.1, Of(10, 100, 1.2).LowestPeukertCurrent.Amperes, 1e-12);

    [Fact]
    public void LifetimeAt_Health_MultipliesTheTimeAtEveryCurrent()
    {
        foreach (var amperes in new[] { 0.1, 1, 20 })
        {
            var drain = Current.FromAmperes(amperes);
            Assert.Equal(0.8, (Of(16, 20, 1.2) with { Health = 0.8 }).LifetimeAt(drain) / Of(16, 20, 1.2).LifetimeAt(drain), 1e-12);
        }
    }

    [Fact]
    public void LifetimeAt_NoDrain_Refuses()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(16, 20, 1.2).LifetimeAt(Current.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(16, 20, 1.2).LifetimeAt(Current.FromAmperes(-1)));
    }

    [Theory]
    [Trait("Kind", "Validation")]
    // Maker's sheet of a 12 V 7.5 Ah VRLA battery, MH47929, 1.75 V a cell at 25 degC: 0.379 A for 20 h, 1.28 A for 5 h, 4.42 A for 1 h.
    [InlineData(1.1390, 0.379, 1.28, 5)]
    [InlineData(1.2196, 0.379, 4.42, 1)]
    // Data sheet of a 12 V 14 Ah VRLA battery: 0.70 A for 20 h, 8.40 A for 1 h, 2.40 A for 5 h.
    [InlineData(1.2056, 0.70, 8.40, 1)]
    [InlineData(1.1251, 0.70, 2.40, 5)]
    public void LifetimeAt_ExponentOfTwoPublishedRates_GivesTheOtherRateBack(double k, double twentyHourAmperes, double amperes, double hours) =>
        Assert.Equal(hours, Of(twentyHourAmperes * 20, 20, k).LifetimeAt(Current.FromAmperes(amperes)).Hours, hours * 2e-4);

    [Fact]
    [Trait("Kind", "Validation")]
    public void LifetimeAt_ExponentOfSlowRates_OverstatesAFastDischarge() =>
        // The same sheet (MH47929): 4.42 A lasts 60 min, the exponent of its 5 h and 20 h ratings says 73.1.
        Assert.Equal(73.1, Of(0.379 * 20, 20, 1.1390).LifetimeAt(Current.FromAmperes(4.42)).Minutes, 0.1);

    private static Battery Of(double capacity, double hours, double k) =>
        Battery("battery", "bus", capacity, hours, k, Table((0, 11), (100, 12.8)), PiecewiseLinear.Constant(20));
}
