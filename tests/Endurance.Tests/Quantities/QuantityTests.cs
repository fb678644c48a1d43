using Endurance.Quantities;

namespace Endurance.Tests.Quantities;

public sealed class QuantityTests
{
    private static readonly Dictionary<string, Func<double, double>> Factories = new(StringComparer.Ordinal)
    {
        ["volts"] = value => Voltage.FromVolts(value).Volts,
        ["amperes"] = value => Current.FromAmperes(value).Amperes,
        ["ohms"] = value => Resistance.FromOhms(value).Ohms,
        ["milliohms"] = value => Resistance.FromMilliohms(value).Milliohms,
        ["siemens"] = value => Conductance.FromSiemens(value).Siemens,
        ["watts"] = value => Power.FromWatts(value).Watts,
        ["joules"] = value => Energy.FromJoules(value).Joules,
        ["watt-hours"] = value => Energy.FromWattHours(value).WattHours,
        ["coulombs"] = value => Charge.FromCoulombs(value).Coulombs,
        ["ampere-hours"] = value => Charge.FromAmpereHours(value).AmpereHours,
        ["seconds"] = value => Duration.FromSeconds(value).Seconds,
        ["minutes"] = value => Duration.FromMinutes(value).Minutes,
        ["hours"] = value => Duration.FromHours(value).Hours,
        ["metres"] = value => Length.FromMetres(value).Metres,
        ["feet"] = value => Length.FromFeet(value).Feet,
        ["kelvin"] = value => Temperature.FromKelvin(value).Kelvin,
        ["degrees Celsius"] = value => Temperature.FromCelsius(value).Celsius,
    };

    public static TheoryData<string> Units => [.. Factories.Keys];

    public static TheoryData<string> SignedUnits => [.. Factories.Keys.Where(unit => unit is not ("kelvin" or "degrees Celsius"))];

    [Theory]
    [MemberData(nameof(Units))]
    public void Factory_NotANumberOrInfinite_Refuses(string unit)
    {
        foreach (var value in new[] { double.NaN, double.PositiveInfinity, double.NegativeInfinity })
            Assert.Throws<ArgumentOutOfRangeException>(() => Factories[unit](value));
    }

    [Theory]
    [MemberData(nameof(Units))]
    public void Factory_Number_ComesBackInTheSameUnit(string unit)
    {
        foreach (var value in new[] { 1e-6, 1, 12.5, 1e6 })
            Assert.Equal(value, Factories[unit](value), Math.Max(1e-9, value * 1e-14));
    }

    [Theory]
    [MemberData(nameof(SignedUnits))]
    public void Factory_ZeroAndNegative_AreLegal(string unit)
    {
        Assert.Equal(0, Factories[unit](0));
        Assert.Equal(-3.5, Factories[unit](-3.5), 1e-14);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Temperature_NotAboveZeroKelvin_Refuses(double kelvin)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromKelvin(kelvin));
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(kelvin - Temperature.CelsiusZero));
    }

    [Fact]
    public void Factory_UnitThatOverflowsInSi_Refuses()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Charge.FromAmpereHours(1e306));
        Assert.Throws<ArgumentOutOfRangeException>(() => Duration.FromHours(1e306));
    }

    [Fact]
    public void Units_OfOneQuantity_Convert()
    {
        Assert.Equal(3600, Charge.FromAmpereHours(1).Coulombs);
        Assert.Equal(3600, Energy.FromWattHours(1).Joules);
        Assert.Equal(90, Duration.FromHours(1.5).Minutes, 1e-12);
        Assert.Equal(0.25, Duration.FromMinutes(15).Hours, 1e-15);
        Assert.Equal(0.3048, Length.FromFeet(1).Metres); // international foot, 1959
        Assert.Equal(0.012, Resistance.FromMilliohms(12).Ohms, 1e-15);
        Assert.Equal(298.15, Temperature.FromCelsius(25).Kelvin, 1e-12);
    }

    [Fact]
    public void Operators_BetweenQuantities_FollowTheLaws()
    {
        var volts = Voltage.FromVolts(12);
        var amperes = Current.FromAmperes(3);
        var ohms = Resistance.FromOhms(4);

        Assert.Equal(amperes, volts / ohms);
        Assert.Equal(volts, amperes * ohms);
        Assert.Equal(Power.FromWatts(36), volts * amperes);
        Assert.Equal(Energy.FromJoules(360), Power.FromWatts(36) * Duration.FromSeconds(10));
        Assert.Equal(Charge.FromCoulombs(30), amperes * Duration.FromSeconds(10));
        Assert.Equal(Duration.FromHours(6), Charge.FromAmpereHours(18) / amperes);
    }

    [Fact]
    public void Operators_ByZero_RefuseRatherThanGiveInfinity()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Voltage.FromVolts(12) / Resistance.Zero);
        Assert.Throws<ArgumentOutOfRangeException>(() => Charge.FromAmpereHours(1) / Current.Zero);
    }

    [Fact]
    public void Operators_WithinOneQuantity_AddScaleAndCompare()
    {
        var two = Voltage.FromVolts(2);
        var three = Voltage.FromVolts(3);

        Assert.Equal(Voltage.FromVolts(5), two + three);
        Assert.Equal(Voltage.FromVolts(-1), two - three);
        Assert.Equal(Voltage.FromVolts(-2), -two);
        Assert.Equal(Voltage.FromVolts(6), two * 3);
        Assert.Equal(Voltage.FromVolts(6), 3 * two);
        Assert.Equal(Voltage.FromVolts(0.5), two / 4);
        Assert.Equal(1.5, three / two);
        Assert.True(two < three && three > two && two <= three && three >= two && two.CompareTo(three) < 0);
        Assert.Equal(default, Voltage.Zero);
    }

    [Fact]
    public void ToString_AnyQuantity_NamesItsUnit()
    {
        Assert.Equal("12.5 V", Voltage.FromVolts(12.5).ToString());
        Assert.Equal("0.6 A", Current.FromAmperes(0.6).ToString());
        Assert.Equal("0.004 ohm", Resistance.FromMilliohms(4).ToString());
        Assert.Equal("28 W", Power.FromWatts(28).ToString());
        Assert.Equal("90 s", Duration.FromMinutes(1.5).ToString());
        Assert.Equal("25 degC", Temperature.FromCelsius(25).ToString());
    }
}
