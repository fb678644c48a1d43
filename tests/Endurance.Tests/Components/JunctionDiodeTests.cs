using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Tests.Components;

public sealed class JunctionDiodeTests
{
    private static readonly Temperature Room = Temperature.FromKelvin(300.15);
    private static readonly Voltage Parked = Voltage.FromVolts(12.6);
    private static readonly Duration Month = Duration.FromHours(720);

    [Theory]
    [Trait("Kind", "Validation")]
    // Parameters of public SPICE models (KiCad-Spice-Library, revision a8688952); voltages computed from them by V = N Vt ln(I/Is + 1) + I Rs.
    [InlineData("3 A Schottky", 2.5069e-6, 1.0281, 11.15, 0.3541, 0.4056, 0.5157)]
    [InlineData("1 A Schottky", 31.7e-6, 1.373, 51, 0.4189, 0.5599, 0.9597)]
    [InlineData("12 A silicon stud", 17.1e-9, 1.7, 3.5, 0.7899, 0.8452, 0.9226)]
    [InlineData("8 A Schottky", 65.03e-6, 1.33205, 11.99, 0.3441, 0.4060, 0.5314)]
    public void ForwardVoltage_PublishedModel_MatchesAtOneThreeAndTenAmperes(
        string part, double saturation, double ideality, double milliohms, double at1, double at3, double at10)
    {
        var diode = Of(saturation, ideality, milliohms);

        Assert.True(part.Length > 0);
        Assert.Equal(at1, diode.ForwardVoltageAt(Current.FromAmperes(1), Room).Volts, 1e-3);
        Assert.Equal(at3, diode.ForwardVoltageAt(Current.FromAmperes(3), Room).Volts, 1e-3);
        Assert.Equal(at10, diode.ForwardVoltageAt(Current.FromAmperes(10), Room).Volts, 1e-3);
    }

    [Fact]
    [Trait("Kind", "Validation")]
    public void EmissionVoltage_AtRoom_IsTheThermalVoltage() =>
        Assert.Equal(0.025865, Of(1e-6, 1, 1).EmissionVoltageAt(Room).Volts, 1e-6); // kT/q at 300.15 K

    [Fact]
    public void SaturationCurrent_AtItsOwnTemperature_IsTheGivenOne() =>
        Assert.Equal(2.5069e-6, Of(2.5069e-6, 1.0281, 11.15).SaturationCurrentAt(Room).Amperes, 1e-18);

    [Theory]
    [InlineData(273.15)]
    [InlineData(330)]
    [InlineData(398.15)]
    public void SaturationCurrent_OtherTemperature_FollowsTheSpiceRelation(double kelvin)
    {
        const double saturation = 2.5069e-6, ideality = 1.0281, gap = 0.69, xti = 2;
        const double electronvoltPerKelvin = 8.617333262e-5; // CODATA 2018
        var ratio = kelvin / 300.15;

        var expected = saturation * Math.Pow(ratio, xti / ideality) * Math.Exp((ratio - 1) * gap / (ideality * electronvoltPerKelvin * kelvin));

        Assert.Equal(expected, Of(saturation, ideality, 11.15).SaturationCurrentAt(Temperature.FromKelvin(kelvin)).Amperes, expected * 1e-7);
    }

    [Fact]
    public void ForwardVoltage_HotterJunction_FallsByMillivoltsPerKelvin()
    {
        var diode = Of(2.5069e-6, 1.0281, 11.15);
        var three = Current.FromAmperes(3);

        var perKelvin = (diode.ForwardVoltageAt(three, Temperature.FromKelvin(310.15)) - diode.ForwardVoltageAt(three, Room)).Volts / 10;

        Assert.InRange(perKelvin, -2.0e-3, -0.5e-3);
    }

    [Fact]
    public void ForwardVoltage_NoCurrent_IsZero() => Assert.Equal(0, Of(1e-6, 1, 1).ForwardVoltageAt(Current.Zero, Room).Volts);

    /// <summary>Is of the published 1N5822 set, 2.5069 uA at 300.15 K: over 30 days 2.5069e-6 x 720 h = 1.805 mAh.</summary>
    [Fact]
    public void ReverseCharge_OfAMonthAtRoomTemperature_IsThatOfTheSaturationCurrent() =>
        Assert.Equal(1.805e-3, Of(2.5069e-6, 1.0281, 11.15).ReverseChargeOver(Month, Parked, Temperature.FromKelvin(300.15)).AmpereHours, 1e-6);

    /// <summary>Is at 333.15 K by the relation of SPICE, computed apart: (333.15/300.15)^(2/1.0281) exp(0.69 eV/(1.0281 k) (1/300.15 K - 1/333.15 K)) = 16.01.</summary>
    [Fact]
    public void ReverseCharge_OfAHotHangar_IsManyTimesThat()
    {
        var diode = Of(2.5069e-6, 1.0281, 11.15);

        var factor = diode.ReverseChargeOver(Month, Parked, Temperature.FromCelsius(60)) / diode.ReverseChargeOver(Month, Parked, Temperature.FromKelvin(300.15));

        Assert.Equal(16.01, factor, 0.01);
    }

    /// <summary>DS23003 allows 2 mA at 40 V and 25 degC, 50 uS: at 12.6 V that is 0.63 mA, 453.6 mAh in 30 days, beside the 1.8 mAh of Is.</summary>
    [Fact]
    public void ReverseCharge_WithTheLeakageOfADataSheet_AddsItsConductance()
    {
        var diode = Of(2.5069e-6, 1.0281, 11.15) with { Leakage = Conductance.FromSiemens(50e-6) };

        Assert.Equal(0.4536 + 0.001805, diode.ReverseChargeOver(Month, Parked, Temperature.FromKelvin(300.15)).AmpereHours, 1e-6);
    }

    [Fact]
    public void ReverseCurrent_AtNoVoltage_IsZero() => Assert.Equal(0, Of(1e-6, 1, 1).ReverseCurrentAt(Voltage.Zero, Room).Amperes);

    private static JunctionDiode Of(double saturation, double ideality, double milliohms) => Parts.Schottky(saturation * 1e6, ideality, milliohms);
}
