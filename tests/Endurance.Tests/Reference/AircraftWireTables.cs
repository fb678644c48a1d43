using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Studies.LoadAnalysis;
using Endurance.Studies.Wiring;

namespace Endurance.Tests.Reference;

/// <summary>FAA AC 43.13-1B (9/8/98, change 1), chapter 11, row by row; every number is printed there unless a comment says otherwise.</summary>
[Trait("Kind", "Validation")]
public sealed class AircraftWireTables
{
    // Table 11-9, page 11-23: continuous amperes in a bundle at 105, 150 and 200 degC, ohm per 1000 ft at 20 degC, circular mils.
    [Theory]
    [InlineData(24, 2.5, 4, 5, 28.40, 475)]
    [InlineData(22, 3, 5, 6, 16.20, 755)]
    [InlineData(20, 4, 7, 9, 9.88, 1216)]
    [InlineData(18, 6, 9, 12, 6.23, 1900)]
    [InlineData(16, 7, 11, 14, 4.81, 2426)]
    [InlineData(14, 10, 14, 18, 3.06, 3831)]
    [InlineData(12, 13, 19, 25, 2.02, 5874)]
    [InlineData(10, 17, 26, 32, 1.26, 9354)]
    [InlineData(8, 38, 57, 71, 0.70, 16983)]
    [InlineData(6, 50, 76, 97, 0.44, 26818)]
    [InlineData(4, 68, 103, 133, 0.28, 42615)]
    [InlineData(2, 95, 141, 179, 0.18, 66500)]
    [InlineData(1, 113, 166, 210, 0.15, 81700)]
    [InlineData(0, 128, 192, 243, 0.12, 104500)]
    [InlineData(-1, 147, 222, 285, 0.09, 133000)]
    [InlineData(-2, 172, 262, 335, 0.07, 166500)]
    [InlineData(-3, 204, 310, 395, 0.06, 210900)]
    public void Wire_OfEachGauge_HasTheRatingsOfTable9(int gauge, double at105, double at150, double at200, double ohms, int circularMils)
    {
        var row = WireTable.Row(new WireGauge(gauge))!;

        Assert.Equal(at105, row.RatingInBundle(Insulation.Rated105).Amperes);
        Assert.Equal(at150, row.RatingInBundle(Insulation.Rated150).Amperes);
        Assert.Equal(at200, row.RatingInBundle(Insulation.Rated200).Amperes);
        Assert.Equal((ohms, circularMils), (row.OhmsPerThousandFeet, row.CircularMils));
        Assert.Equal(ohms, Run(gauge, 1000, 20).Resistance.Ohms, 1e-9);
        Assert.Contains("table 11-9, page 11-23", row.Source, StringComparison.Ordinal);
    }

    // Tables 11-7 and 11-8, page 11-22: gauge, feet, amperes, nominal volts whose limit is used, printed drop, recomputed drop, units of the printed rounding.
    // The fourth row is rounded up in print; the sixth is a misprint there: 0.366 V, where 0.00126 x 19.5 x 20 gives 0.491 V.
    [Theory]
    [InlineData(6, 107, 20, 28, 0.942, 0.9416)]
    [InlineData(4, 90, 20, 14, 0.504, 0.504)]
    [InlineData(12, 88, 20, 115, 3.60, 3.5552)]
    [InlineData(14, 100, 20, 200, 6.12, 6.12)]
    [InlineData(10, 39, 20, 28, 0.98, 0.9828)]
    [InlineData(10, 19.5, 20, 14, null, 0.4914)]
    [InlineData(10, 156, 20, 115, 3.93, 3.9312)]
    [InlineData(10, 273, 20, 200, 6.88, 6.8796)]
    public void Drop_OfTheWorkedRows_IsTheirsAndPasses(int gauge, double feet, double amperes, double nominal, double? printed, double recomputed)
    {
        var drop = Run(gauge, feet, 20).Drop(Current.FromAmperes(amperes));

        Assert.Equal(recomputed, drop.Volts, 1e-9);
        if (printed is { } volts)
            Assert.Equal(volts, drop.Volts, volts * 0.0126);
        // The second row's 0.504 V is accepted there against 0.5 V, so a strict comparison would fail the source's own example.
        Assert.True(WireTables.Within(drop, AllowableDrop.At(Voltage.FromVolts(nominal))!.Continuous));
    }

    [Theory]
    [InlineData(0.505, true)]
    [InlineData(0.506, false)]
    public void Drop_AtItsLimit_HasOnePercent(double volts, bool passes) =>
        Assert.Equal(passes, WireTables.Within(Voltage.FromVolts(volts), Voltage.FromVolts(0.5)));

    // Table 11-6: the continuous column by the limits of tables 11-7 and 11-8, the intermittent one from memory, unverified.
    [Theory]
    [InlineData(14, 0.5, 1)]
    [InlineData(28, 1, 2)]
    [InlineData(115, 4, 8)]
    [InlineData(200, 7, 14)]
    public void AllowableDrop_ByNominalVolts_IsThatOfTable6(double nominal, double continuous, double intermittent)
    {
        var row = AllowableDrop.At(Voltage.FromVolts(nominal))!;

        Assert.Equal((continuous, intermittent), (row.Continuous.Volts, row.Intermittent.Value.Volts));
        Assert.Equal(Sourced<Voltage>.FromMemory, row.Intermittent.Source);
        Assert.Null(AllowableDrop.At(Voltage.FromVolts(nominal + 1)));
        Assert.Same(row, AllowableDrop.For(Voltage.FromVolts(nominal)));
    }

    // Not in the table: in proportion to the row below, or to the lowest.
    [Theory]
    [InlineData(5, 0.5 * 5 / 14, 1.0 * 5 / 14)]
    [InlineData(48, 1.0 * 48 / 28, 2.0 * 48 / 28)]
    public void AllowableDrop_OfAVoltageBetween_IsInProportion(double nominal, double continuous, double intermittent)
    {
        var row = AllowableDrop.For(Voltage.FromVolts(nominal));

        Assert.Equal(nominal, row.Nominal.Volts);
        Assert.Equal(continuous, row.Continuous.Volts, 1e-12);
        Assert.Equal(intermittent, row.Intermittent.Value.Volts, 1e-12);
    }

    // Page 11-22: L2 = 254.5 L1/(234.5 + T2) for copper; the ratio at 60 degC follows from it.
    [Fact]
    public void Copper_Warm_FollowsTheLengthFormula()
    {
        Assert.Equal(1.1572, Wire.CopperFactorAt(Temperature.FromCelsius(60)), 1e-4);
        Assert.Equal(0.003929, Wire.CopperFactorAt(Temperature.FromCelsius(21)) - 1, 1e-6);
    }

    // Page 11-27, example 2: No. 14, 20 A, 15.5 ft, 200 degC insulation, 50 degC ambient; 47 A x 0.91 x 0.6 = 26 A (25.66) is printed.
    // T2 182 degC (181.56) and L2 9.5 ft (9.48) are from memory, unverified; so is the layout of the formula.
    [Fact]
    public void SecondExample_ConductorTemperatureAndLength_AreTheirs()
    {
        var hot = WireRun.ConductorTemperature(Temperature.FromCelsius(50), Temperature.FromCelsius(200), Current.FromAmperes(20), Current.FromAmperes(26));

        Assert.Equal(181.56, hot.Celsius, 0.005);
        Assert.Equal(9.48, 15.5 / Wire.CopperFactorAt(hot), 0.005);
    }

    // Page 11-26, example 1: 50 ft, 20 A, 28 V continuous falls between No. 8 and No. 10; take No. 8.
    [Fact]
    public void FirstExample_Limit_LiesBetweenTenAndEight()
    {
        const double limit = 1.0 / (20 * 50) * 1000;

        Assert.InRange(limit, WireTable.Row(new WireGauge(8))!.OhmsPerThousandFeet, WireTable.Row(new WireGauge(10))!.OhmsPerThousandFeet);
    }

    // Table 11-3, page 11-15. The excerpt gives its columns as lists; that breakers are missing at 1 and 1/0 is inferred from their number.
    [Theory]
    [InlineData(22, 5.0, 5)]
    [InlineData(20, 7.5, 5)]
    [InlineData(18, 10.0, 10)]
    [InlineData(16, 15.0, 10)]
    [InlineData(14, 20.0, 15)]
    [InlineData(12, 30.0, 20)]
    [InlineData(10, 40.0, 30)]
    [InlineData(8, 50.0, 50)]
    [InlineData(6, 80.0, 70)]
    [InlineData(4, 100.0, 70)]
    [InlineData(2, 125.0, 100)]
    [InlineData(1, null, 150)]
    [InlineData(0, null, 150)]
    public void Protection_ByGauge_IsThatOfTable3(int gauge, double? breaker, double fuse)
    {
        Assert.Equal(breaker, ProtectionChart.Largest(new WireGauge(gauge), ProtectionKind.Breaker)?.Amperes);
        Assert.Equal(fuse, ProtectionChart.Largest(new WireGauge(gauge), ProtectionKind.Fuse)?.Amperes);
    }

    // Table 11-4, page 11-17.
    [Theory]
    [InlineData(LoadType.Lamp, 8, 5)]
    [InlineData(LoadType.Inductive, 4, 2)]
    [InlineData(LoadType.Resistive, 2, 1)]
    [InlineData(LoadType.Motor, 3, 2)]
    public void Switch_ByTypeOfLoad_IsThatOfTable4(LoadType type, double at28, double at12)
    {
        Assert.Equal(at28, SwitchDerating.Factor(type, Voltage.FromVolts(28)));
        Assert.Equal(at12, SwitchDerating.Factor(type, Voltage.FromVolts(14)));
    }

    // Paragraph 11-35, page 11-12.
    [Fact]
    public void AlternatorShare_Limit_IsFourFifths() => Assert.Equal(0.8, AlternatorShare.Limit);

    // HyperPhysics wire gauge table, column chassis wiring; no size 24.
    [Theory]
    [InlineData(22, 7.0)]
    [InlineData(14, 32.0)]
    [InlineData(2, 181.0)]
    [InlineData(24, null)]
    public void FreeAir_ByGauge_IsTheChassisColumn(int gauge, double? amperes) => Assert.Equal(amperes, FreeAirRatings.Of(new WireGauge(gauge))?.Amperes);

    // d = 0.005 in x 92^((36-n)/39), 1.724e-8 ohm m (piping-designer.com); table at HyperPhysics; 0.1 %.
    [Theory]
    [InlineData(24, 25.67, 0.0201)]
    [InlineData(22, 16.14, 0.02535)]
    [InlineData(20, 10.15, 0.03196)]
    [InlineData(18, 6.385, 0.0403)]
    [InlineData(16, 4.016, 0.05082)]
    [InlineData(14, 2.525, 0.06408)]
    [InlineData(12, 1.588, 0.0808)]
    [InlineData(10, 0.9989, 0.10189)]
    [InlineData(8, 0.6282, 0.12849)]
    [InlineData(6, 0.3951, 0.16202)]
    [InlineData(4, 0.2485, 0.20431)]
    [InlineData(2, 0.1563, 0.25763)]
    [InlineData(0, 0.0983, 0.32485)]
    [InlineData(-3, 0.0490, 0.46)]
    public void SolidWire_ByItsGauge_IsNotTheStrandedTable(int gauge, double ohmsPerThousandFeet, double inches)
    {
        Assert.Equal(inches, SolidCopperWire.Diameter(new WireGauge(gauge)).Metres / 0.0254, inches * 1e-3);
        Assert.Equal(ohmsPerThousandFeet, SolidCopperWire.OhmsPerMetreAt20(new WireGauge(gauge)) * 304.8, ohmsPerThousandFeet * 1e-3);
    }

    private static WireRun Run(int gauge, double feet, double celsius)
    {
        var number = new WireGauge(gauge);
        return WireRun.Of(Wire.OfGauge(number, Length.FromFeet(feet), WireTable.OhmsPerMetreAt20(number)!.Value, Temperature.FromCelsius(celsius)), null)!;
    }
}
