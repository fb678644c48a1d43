using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using static Endurance.Tests.Yaml.BatteryText;

namespace Endurance.Tests.Yaml;

public sealed class BatteryBindingTests
{
    [Fact]
    public void Chemistry_SuppliesWhatIsNotGiven_EachAsALibraryAssumption()
    {
        var scenario = Scenario("chemistry: agm, capacity: 18 Ah, rate: 20 h", "current: 1 A");
        var battery = scenario.Batteries[0];

        Assert.Equal(1.22, battery.PeukertExponent);
        Assert.Equal(0.9, battery.ChargeEfficiency);
        Assert.Equal(1, battery.ChargeAcceptancePerHour);
        Assert.Equal(6, battery.Cells);
        Assert.Equal(0.190 / 18, battery.Resistance.At(1), 12);
        var library = scenario.Assumptions.Where(assumption => assumption.Origin == Origin.Library).ToList();
        Assert.Equal(8, library.Count);
        Assert.All(library, assumption => Assert.False(string.IsNullOrEmpty(assumption.Source)));
    }

    [Fact]
    public void GivenValues_BesideAChemistry_Win()
    {
        var battery = Battery($"chemistry: agm, capacity: 18 Ah, rate: 20 h, peukert: 1.1, charge_efficiency: 95 %, charge_acceptance: 0.5 /h, cells: 5, capacity_factor: 70 %, resistance_factor: 2, temperature: 0 degC, {Plain}");

        Assert.Equal(1.1, battery.PeukertExponent);
        Assert.Equal(0.95, battery.ChargeEfficiency, 12);
        Assert.Equal(0.5, battery.ChargeAcceptancePerHour);
        Assert.Equal(5, battery.Cells);
        Assert.Equal(0.7, battery.CapacityFactor, 12);
        Assert.Equal(2, battery.ResistanceFactor);
        Assert.Equal(0.001, battery.Resistance.At(0.5), 12);
    }

    [Theory]
    [InlineData("28 V", "cells: 6, ", 1)]
    [InlineData("28 V", "", 2)]
    [InlineData("28 V", "cells: 12, ", 2)]
    [InlineData("14 V", "cells: 12, ", 2)]
    public void Cells_OfAChemistry_SetVoltsAndOhms(string system, string cells, double twelves)
    {
        var twelve = Battery("chemistry: agm, capacity: 18 Ah, rate: 20 h");

        var battery = Battery($"chemistry: agm, {cells}capacity: 18 Ah, rate: 20 h", system);

        Assert.Equal(twelve.Emf.Y.Select(volts => Math.Round(volts * twelves, 9)), battery.Emf.Y.Select(volts => Math.Round(volts, 9)));
        Assert.Equal(twelve.Resistance.At(0.5) * twelves, battery.Resistance.At(0.5), 12);
        Assert.Equal(6 * (int)twelves, battery.Cells);
    }

    [Fact]
    public void WithoutChemistry_NoTemperatureEffectAndNoChargeLimit()
    {
        var battery = Battery($"capacity: 18 Ah, rate: 20 h, peukert: 1.1, temperature: -20 degC, {Plain}");

        Assert.Equal(1, battery.CapacityFactor);
        Assert.Equal(1, battery.ResistanceFactor);
        Assert.Null(battery.ChargeAcceptancePerHour);
        Assert.Null(battery.Cells);
    }

    [Fact]
    public void Health_DividesLibraryResistanceOnly()
    {
        var library = Battery("chemistry: agm, capacity: 19 Ah, rate: 20 h, health: 80 %");
        var typed = Battery("chemistry: agm, capacity: 19 Ah, rate: 20 h, health: 80 %, resistance: 10 mohm");
        var replaced = Battery("chemistry: agm, capacity: 19 Ah, rate: 20 h, health: 80 %, resistance_factor: 3");

        Assert.Equal(0.010 / 0.8, library.Resistance.At(1), 12);
        Assert.Equal(0.010, library.NewAndWarm.Resistance.At(1), 12);
        Assert.Equal(0.010, typed.Resistance.At(1), 12);
        Assert.Equal(0.010, replaced.Resistance.At(1), 12);
        Assert.Equal(3, replaced.ResistanceFactor);
    }

    [Fact]
    public void TwentyEightVolts_IsTwoTwelveVoltBatteriesInSeries()
    {
        var one = Battery("chemistry: nicd, capacity: 23 Ah, rate: 1 h");
        var two = Battery("chemistry: nicd, capacity: 23 Ah, rate: 1 h", "28 V");

        Assert.Equal(10, one.Cells);
        Assert.Equal(20, two.Cells);
        Assert.All(one.Emf.Y.Zip(two.Emf.Y), pair => Assert.Equal(2 * pair.First, pair.Second, 9));
        Assert.Equal(2 * one.Resistance.At(0.5), two.Resistance.At(0.5), 12);
    }

    [Fact]
    public void LibraryEmf_WhenEmpty_IsTheEndVoltagePlusTheDropOfTheRatedCurrent()
    {
        var battery = Battery("chemistry: agm, capacity: 16 Ah, rate: 20 h, resistance: 50 mohm");

        Assert.Equal((6 * 1.75) + (0.8 * 0.050), battery.Emf.At(0), 9);
    }

    [Fact]
    public void Reserve_BesideACapacity_GivesTheExponent()
    {
        var battery = Battery($"capacity: 50 Ah, rate: 20 h, reserve: 80 min, {Plain}");

        // k = ln(t1/t2)/ln(I2/I1)
        Assert.Equal(Math.Log(1200.0 / 80) / Math.Log(25 / 2.5), battery.PeukertExponent, 12);
        Assert.Equal(50, battery.RatedCapacity.AmpereHours, 9);
        Assert.Equal(80, battery.LifetimeAt(Current.FromAmperes(25)).Minutes, 6);
        Assert.Equal((2.5, 25), (battery.ExponentRange!.Value.Lowest.Amperes, battery.ExponentRange.Value.Highest.Amperes));
    }

    [Fact]
    public void ThreeRatings_TakeTheSlowestAndTheFastest()
    {
        var battery = Battery($"ratings: [[1 h, 10 Ah], [20 h, 16 Ah], [5 h, 12 Ah]], {Plain}");

        Assert.Equal(Math.Log(20) / Math.Log(10 / 0.8), battery.PeukertExponent, 12);
        Assert.Equal(20, battery.Rate.Hours, 9);
        Assert.Equal(3, battery.Ratings.Length);
    }

    [Fact]
    public void TypedExponent_BesideRatings_IsUsedWithoutARange()
    {
        var battery = Battery($"ratings: [[1 h, 10 Ah], [20 h, 16 Ah]], peukert: 1.3, {Plain}");

        Assert.Equal(1.3, battery.PeukertExponent);
        Assert.Null(battery.ExponentRange);
    }

    [Fact]
    public void KineticWithoutValues_IsFittedAndSaysThatItExceedsTheRating()
    {
        var scenario = Scenario($"capacity: 16 Ah, rate: 20 h, peukert: 1.2, capacity_model: kinetic, {Plain}", "current: 1 A");

        Assert.Equal(CapacityModel.Kinetic, scenario.Batteries[0].CapacityModel);
        Assert.Null(scenario.Batteries[0].TypedWells);
        Assert.Contains(scenario.Assumptions, assumption => assumption.Origin == Origin.Derived && assumption.Text.EndsWith("111 % of the rating", StringComparison.Ordinal));
    }

    [Fact]
    public void KineticValues_Typed_AreKept()
    {
        var wells = Battery($"capacity: 16 Ah, rate: 20 h, peukert: 1.2, capacity_model: kinetic, kinetic: {{available: 49 %, rate: 0.47 /h, capacity: 17.8 Ah}}, {Plain}").TypedWells!;

        Assert.Equal(0.49, wells.Available, 12);
        Assert.Equal(0.47, wells.RatePerHour, 12);
        Assert.Equal(17.8, wells.Capacity.AmpereHours, 9);
    }

    [Fact]
    public void KineticWithoutWells_FallsBackToPeukert() =>
        Assert.Equal(CapacityModel.Peukert, Battery($"capacity: 16 Ah, rate: 20 h, peukert: 1, capacity_model: kinetic, {Plain}").CapacityModel);

    [Fact]
    public void ProtectionAndPolarisation_HoldWhatWasTyped()
    {
        var battery = Battery($"capacity: 16 Ah, rate: 1 h, peukert: 1.05, protection: {{opens_below: 10 V, opens_above: 60 A, no_charge_below: 0 degC, recloses_above: 12.5 V}}, polarisation: [{{resistance: 6 mohm, time: 40 s}}, {{resistance: 9 mohm, time: 20 min}}], {Plain}");

        Assert.Equal(
            new BatteryProtection
            {
                OpensBelow = Voltage.FromVolts(10),
                OpensAbove = Current.FromAmperes(60),
                NoChargeBelow = Temperature.FromCelsius(0),
                RecloseAbove = Voltage.FromVolts(12.5),
            },
            battery.Protection);
        Assert.Equal([40, 1200], battery.Polarisation.Select(pair => pair.Time.Seconds));
        Assert.Equal(0.006, battery.Polarisation[0].Resistance.Ohms, 12);
    }

    [Fact]
    public void DischargePoints_WithChemistry_ScaleItByTheLongestPoint()
    {
        var battery = Battery("chemistry: agm, discharge_points: [{current: 4 A, lasts: 1 h, to: 10.5 V}, {current: 0.4 A, lasts: 20 h, to: 10.5 V}]");

        Assert.Equal(0.190 / 8, battery.Resistance.At(1), 12);
        Assert.Equal(0.4, battery.Lifetimes!.Lowest.Amperes, 12);
        Assert.Equal(1, battery.PeukertExponent);
        Assert.Equal([60, 1200], battery.Ratings.Select(rating => rating.Lasts.Minutes));
    }
}
