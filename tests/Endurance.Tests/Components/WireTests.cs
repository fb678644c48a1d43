using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Tests.Components;

[Trait("Kind", "Validation")]
public sealed class WireTests
{
    private const double Foot = 0.3048;

    [Fact]
    public void CopperFactor_SixtyDegrees_MatchesTheHandbookFormula()
    {
        // FAA AC 43.13-1B, page 11-22: (234.5 + 60)/(234.5 + 20).
        Assert.Equal(1.1572, Wire.CopperFactorAt(Temperature.FromCelsius(60)), 1e-4);
        Assert.Equal(1, Wire.CopperFactorAt(Temperature.FromCelsius(20)), 1e-12);
    }

    [Fact]
    public void CopperFactor_PerKelvin_MatchesTheHandbookCoefficient() =>
        // FAA AC 43.13-1B, page 11-22: 1/254.5 per kelvin at 20 degC.
        Assert.Equal(0.003929, Wire.CopperFactorAt(Temperature.FromCelsius(21)) - 1, 1e-6);

    [Theory]
    // FAA AC 43.13-1B, tables 11-7 and 11-8, page 11-22; the answer as recomputed where the circular rounds or errs.
    [InlineData(6, 0.00044, 107, 20, 0.9416)]
    [InlineData(4, 0.00028, 90, 20, 0.504)]
    [InlineData(12, 0.00202, 88, 20, 3.555)] // printed 3.60
    [InlineData(14, 0.00306, 100, 20, 6.12)]
    [InlineData(10, 0.00126, 39, 20, 0.983)]
    [InlineData(10, 0.00126, 19.5, 20, 0.491)] // printed 0.366, which is wrong
    [InlineData(10, 0.00126, 156, 20, 3.931)]
    [InlineData(10, 0.00126, 273, 20, 6.880)]
    public void OfGauge_HandbookRun_DropsTheHandbookVoltage(int gauge, double ohmsPerFoot, double feet, double amperes, double volts)
    {
        var wire = Wire.OfGauge(new WireGauge(gauge), Length.FromFeet(feet), ohmsPerFoot / Foot, Temperature.FromCelsius(20));

        Assert.Equal(volts, (Current.FromAmperes(amperes) * wire.Resistance).Volts, 6e-4);
    }

    [Theory]
    [InlineData(20, 1.26, 0.00126, 10)] // No. 10 over 50 ft at 20 A
    [InlineData(20, 0.70, 0.00070, 8)]
    [InlineData(70, 0.84, 0.00070, 8)] // at a conductor of 70 degC
    public void OfGauge_FiftyFeetAtTwentyAmperes_DropsAsComputedByHand(double celsius, double volts, double ohmsPerFoot, int gauge)
    {
        var wire = Wire.OfGauge(new WireGauge(gauge), Length.FromFeet(50), ohmsPerFoot / Foot, Temperature.FromCelsius(celsius));

        Assert.Equal(volts, 20 * wire.Resistance.Ohms, 0.005);
    }

    [Theory]
    [InlineData(12, "12 AWG")]
    [InlineData(0, "1/0 AWG")]
    [InlineData(-1, "2/0 AWG")]
    [InlineData(-3, "4/0 AWG")]
    public void Gauge_AsText_ReadsAsTheTradeWritesIt(int number, string text) => Assert.Equal(text, new WireGauge(number).ToString());
}
