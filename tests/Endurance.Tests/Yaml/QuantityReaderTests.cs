using Endurance.Yaml.Units;
using Xunit;

namespace Endurance.Tests.Yaml;

public class QuantityReaderTests
{
    private static readonly QuantityRange Amperes = QuantityRange.Above(Dimension.Current, "A", 0, 10, "1 A");
    private static readonly QuantityRange Celsius = QuantityRange.From(Dimension.Temperature, "degC", -40, 100, "25 degC");
    private static readonly QuantityRange Percent = QuantityRange.From(Dimension.Fraction, "%", 0, 100, "90 %");
    private static readonly QuantityRange Ohms = QuantityRange.Above(Dimension.Resistance, "ohm", 0, 1000, "1 ohm");
    private static readonly QuantityRange Bare = QuantityRange.From(Dimension.Number, "", 1, 3, "1.2");

    public static TheoryData<string, string, string> SpeltOut => new()
    {
        { "voltage", "volts", "V" }, { "current", "Amps", "A" }, { "power", "watts", "W" }, { "resistance", "ohms", "ohm" }, { "resistance", "milliohms", "mohm" },
        { "time", "hours", "h" }, { "time", "minutes", "min" }, { "time", "m", "min" }, { "time", "sec", "s" }, { "temperature", "C", "degC" },
        { "temperature", "fahrenheit", "degF" }, { "percentage", "percent", "%" }, { "length", "feet", "ft" }, { "length", "inches", "in" }, { "length", "meters", "m" },
        { "wire gauge", "ga", "AWG" }, { "current", "volts", "" },
    };

    [Theory]
    [MemberData(nameof(SpeltOut))]
    public void Unit_SpeltOut_SuggestsTheSymbol(string kind, string unit, string symbol)
    {
        var dimension = Dimension.All.First(one => one.Name.EndsWith($" {kind}", StringComparison.Ordinal));

        Assert.Equal(symbol, QuantityReader.Read($"5 {unit}", QuantityRange.From(dimension, dimension.Units[0].Symbol, 0, 1e6, "1")).Fault!.Nearest ?? "");
    }

    [Theory]
    [InlineData("1 A", 1)]
    [InlineData("1A", 1)]
    [InlineData("  1   A ", 1)]
    [InlineData("+2.5 A", 2.5)]
    [InlineData(".5 A", 0.5)]
    [InlineData("5. A", 5)]
    [InlineData("010 A", 10)] // plain text: no octal
    [InlineData("1e-3 A", 0.001)]
    [InlineData("1E3 mA", 1)]
    [InlineData("20 uA", 20e-6)]
    [InlineData("20 \u00B5A", 20e-6)]
    [InlineData("20 \u03BCA", 20e-6)]
    [InlineData("10 A", 10)]
    [InlineData("10000 mA", 10)]
    [InlineData("1e-12 A", 1e-12)]
    public void Current_Legal_ReadsInAmperes(string text, double expected) => AssertRead(Amperes, text, expected);

    [Theory]
    [InlineData("0 A", "out-of-range")]
    [InlineData("9e-13 A", "out-of-range")] // nothing to divide by
    [InlineData("4.9e-324 A", "out-of-range")]
    [InlineData("-1 A", "out-of-range")]
    [InlineData("10.000001 A", "out-of-range")]
    [InlineData("1e400 A", "number-not-finite")]
    [InlineData("NaN", "number-not-finite")]
    [InlineData(".inf A", "number-not-finite")]
    [InlineData("-Infinity", "number-not-finite")]
    [InlineData("1", "missing-unit")]
    [InlineData("1 a", "unknown-unit")]
    [InlineData("1 kA", "unknown-unit")]
    [InlineData("1 A A", "unknown-unit")]
    [InlineData("1 V", "wrong-unit")]
    [InlineData("5,5 A", "decimal-comma")]
    [InlineData("1:30", "not-a-quantity")]
    [InlineData("0x10 A", "not-a-quantity")]
    [InlineData("1_000 A", "not-a-quantity")]
    [InlineData("1-2 A", "not-a-quantity")]
    [InlineData("", "not-a-quantity")]
    [InlineData("A", "not-a-quantity")]
    [InlineData(".", "not-a-quantity")]
    [InlineData("-", "not-a-quantity")]
    public void Current_Illegal_HasItsOwnCode(string text, string code) => Assert.Equal(code, QuantityReader.Read(text, Amperes).Fault?.Code);

    [Theory]
    [InlineData("0 degC", 273.15)]
    [InlineData("-40 degF", 233.15)]
    [InlineData("32 degF", 273.15)]
    [InlineData("212\u00B0F", 373.15)]
    [InlineData("25 \u00B0C", 298.15)]
    public void Temperature_Legal_ReadsInKelvin(string text, double expected) => AssertRead(Celsius, text, expected);

    [Theory]
    [InlineData("0 %", 0)]
    [InlineData("100%", 1)]
    [InlineData("12.5 %", 0.125)]
    public void Percentage_Legal_ReadsAsAFraction(string text, double expected) => AssertRead(Percent, text, expected);

    [Theory]
    [InlineData("3 m\u03A9", 0.003)]
    [InlineData("3 \u2126", 3)]
    [InlineData("3 uohm", 3e-6)]
    public void Resistance_BySymbol_ReadsInOhms(string text, double expected) => AssertRead(Ohms, text, expected);

    [Theory]
    [InlineData("1", null)]
    [InlineData("3", null)]
    [InlineData("0.999999", "out-of-range")]
    [InlineData("3.000001", "out-of-range")]
    [InlineData("1.2 V", "unexpected-unit")]
    [InlineData("120 %", "unexpected-unit")]
    public void BareNumber_TakesNoUnit(string text, string? code) => Assert.Equal(code, QuantityReader.Read(text, Bare).Fault?.Code);

    [Theory]
    [InlineData("5,5 A", "a decimal point: 5.5 A")]
    [InlineData("1,000 mA", "a decimal point: 1.000 mA; or, for thousands, no comma: 1000 mA")]
    public void Comma_InANumber_IsTakenForBothThingsThatItCanMean(string text, string expected) => Assert.Equal(expected, QuantityReader.Read(text, Amperes).Fault?.Expected);

    [Theory]
    [InlineData("1 AMP", "A")]
    [InlineData("1 amps", "A")]
    [InlineData("1 ma", "mA")]
    [InlineData("1 xyz", null)]
    [InlineData("1 kA", null)] // a thousand times more than any unit of the list
    [InlineData("1 MA", null)]
    public void Unit_Misspelt_SuggestsTheNearest(string text, string? nearest) => Assert.Equal(nearest ?? "", QuantityReader.Read(text, Amperes).Fault?.Nearest ?? "");

    private static void AssertRead(QuantityRange range, string text, double expected)
    {
        var reading = QuantityReader.Read(text, range);

        Assert.Null(reading.Fault);
        Assert.Equal(expected, reading.Value!.Value, 1e-12 * Math.Max(1, Math.Abs(expected)));
    }
}
