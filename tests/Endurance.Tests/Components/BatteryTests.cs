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

    [Fact]
    public void NewAndWarm_AgedColdAndHalfEmpty_IsAsFromTheMaker()
    {
        var aged = Of(16, 20, 1.2) with
        {
            Health = 0.5,
            Resistance = PiecewiseLinear.Constant(0.04),
            ResistanceWhenNew = PiecewiseLinear.Constant(0.02),
            CapacityFactor = 0.7,
            ResistanceFactor = 1.6,
            InitialCharge = 0.5,
            Temperature = Temperature.FromCelsius(-10),
        };

        var fresh = aged.NewAndWarm;

        Assert.Equal((1, 1, 1, 1), (fresh.Health, fresh.CapacityFactor, fresh.ResistanceFactor, fresh.InitialCharge));
        Assert.Equal(0.02, fresh.Resistance.At(0.5), 1e-12);
        Assert.Equal(25, fresh.Temperature.Celsius, 1e-9);
        Assert.Equal(16, fresh.EffectiveCapacity.AmpereHours, 1e-12);
    }

    [Fact]
    public void WithHealth_LibraryResistance_GrowsAsHealthFallsAndAMeasuredOneStays()
    {
        var measured = Of(16, 20, 1.2);
        var library = measured with { ResistanceWhenNew = measured.Resistance };

        Assert.Equal(20e-3 / 0.8, library.WithHealth(0.8).Resistance.At(0.5), 1e-12);
        Assert.Equal(20e-3, measured.WithHealth(0.8).Resistance.At(0.5), 1e-12);
        Assert.Equal(0.8, library.WithHealth(0.8).Health);
    }

    [Fact]
    public void WithTemperature_KnownChemistry_FollowsItsTablesAndAnUnknownOneStays()
    {
        var unknown = Of(16, 20, 1.2) with { CapacityFactor = 0.9, ResistanceFactor = 1.1 };
        var known = unknown with
        {
            CapacityOverTemperature = PiecewiseLinear.FromPoints((-20, 0.5), (20, 1)),
            ResistanceOverTemperature = PiecewiseLinear.FromPoints((-20, 2), (20, 1)),
        };

        var cold = known.WithTemperature(Temperature.FromCelsius(0));
        var same = unknown.WithTemperature(Temperature.FromCelsius(0));

        Assert.Equal((0.75, 1.5), (Math.Round(cold.CapacityFactor, 9), Math.Round(cold.ResistanceFactor, 9)));
        Assert.Equal((0.9, 1.1), (same.CapacityFactor, same.ResistanceFactor));
        Assert.Equal(0, same.Temperature.Celsius, 1e-9);
    }

    /// <summary>A new battery with these wells lasts 97.07 min at 40 A, see KineticSteps; one with 0.4 of its capacity lasts so long at 0.4 of that current.</summary>
    [Fact]
    public void KineticLifetimeAt_HealthAndCold_ScaleTheCurrentOfALifetime()
    {
        var wells = KineticWells.Through(
            (Duration.FromHours(20), Charge.FromAmpereHours(100)), (Duration.FromHours(10), Charge.FromAmpereHours(93)), (Duration.FromHours(1), Charge.FromAmpereHours(60)));
        var battery = Of(100, 20, 1.2) with { TypedWells = wells, Health = 0.5, CapacityFactor = 0.8 };

        Assert.Equal(97.07, battery.KineticLifetimeAt(Current.FromAmperes(16))!.Value.Minutes, 0.05);
    }

    /// <summary>The wells go through the lifetimes of Peukert's law at the 20-, 5- and 1-hour currents, so there both models agree.</summary>
    [Theory]
    [InlineData(20)]
    [InlineData(5)]
    [InlineData(1)]
    public void KineticWells_NotTyped_LastAsPeukertSaysAtTheFittedTimes(double hours)
    {
        var battery = Of(16, 20, 1.2);

        Assert.Equal(hours, battery.KineticLifetimeAt(battery.NewCurrentFor(Duration.FromHours(hours)))!.Value.Hours, hours * 1e-6);
    }

    [Fact]
    public void KineticLifetimeAt_ExponentOfOne_HasNoWells() => Assert.Null(Of(16, 20, 1).KineticLifetimeAt(Current.FromAmperes(5)));

    [Theory]
    [InlineData(16, 20, 1.2, 1)]
    [InlineData(10, 1, 1.3, 0.2)]
    public void NewCurrentFor_ATime_IsTheCurrentThatLastsSoLong(double capacity, double hours, double k, double time)
    {
        var battery = Of(capacity, hours, k);

        Assert.Equal(time, battery.LifetimeAt(battery.NewCurrentFor(Duration.FromHours(time))).Hours, 1e-9);
    }

    [Fact]
    public void Lifetimes_OfADataSheet_StandInPlaceOfPeukertsLaw()
    {
        var battery = Of(20, 20, 1.9) with { Lifetimes = Sheet, Health = 0.8, CapacityFactor = 0.5 };

        Assert.Equal(1, battery.LowestPeukertCurrent.Amperes);
        Assert.Equal(0.4 * 4, battery.LifetimeAt(Current.FromAmperes(4)).Hours, 1e-9);
        Assert.Equal(4, battery.NewCurrentFor(Duration.FromHours(4)).Amperes, 1e-9);
        Assert.Equal(2, battery.NewCurrentFor(Duration.FromHours(Math.Sqrt(80))).Amperes, 1e-9);
        Assert.Equal(0.5, battery.NewCurrentFor(Duration.FromHours(40)).Amperes, 1e-9);
    }

    private static LifetimeCurve Sheet => new()
    {
        Points = [(Current.FromAmperes(1), Duration.FromHours(20)), (Current.FromAmperes(4), Duration.FromHours(4)), (Current.FromAmperes(16), Duration.FromHours(0.5))],
    };

    private static Battery Of(double capacity, double hours, double k) =>
        Battery("battery", "bus", capacity, hours, k, Table((0, 11), (100, 12.8)), PiecewiseLinear.Constant(20));
}
