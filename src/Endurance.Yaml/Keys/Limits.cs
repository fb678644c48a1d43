using Endurance.Yaml.Units;

namespace Endurance.Yaml.Keys;

/// <summary>Limits of the quantities of a file: wide enough for any aircraft or bench, narrow enough to stop a slipped unit.</summary>
internal static class Limits
{
    public static QuantityRange Volts(string example) => QuantityRange.Above(Dimension.Voltage, "V", 0, 100, example);

    public static QuantityRange VoltsFromZero(string example) => QuantityRange.From(Dimension.Voltage, "V", 0, 100, example);

    public static QuantityRange Amperes(string example) => QuantityRange.Above(Dimension.Current, "A", 0, 10_000, example);

    public static QuantityRange Watts(string example) => QuantityRange.Above(Dimension.Power, "W", 0, 100_000, example);

    public static QuantityRange Ohms(string example) => QuantityRange.Above(Dimension.Resistance, "ohm", 0, 1_000_000, example);

    public static QuantityRange Percent(string example) => QuantityRange.From(Dimension.Fraction, "%", 0, 100, example);

    public static QuantityRange PercentAboveZero(double most, string example) => QuantityRange.Above(Dimension.Fraction, "%", 0, most, example);

    public static QuantityRange Celsius(double least, double most, string example) => QuantityRange.From(Dimension.Temperature, "degC", least, most, example);

    public static QuantityRange Time(string example) => QuantityRange.From(Dimension.Time, "h", 0, 1000, example);

    public static QuantityRange TimeAboveZero(string example) => QuantityRange.Above(Dimension.Time, "h", 0, 1000, example);

    public static QuantityRange Number(double least, double most, string example) => QuantityRange.From(Dimension.Number, "", least, most, example);
}
