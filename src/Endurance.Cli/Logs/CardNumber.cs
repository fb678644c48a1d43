using Endurance.Studies.GroundTest;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Units;

namespace Endurance.Cli.Logs;

/// <summary>A reading as people type it: with or without its unit, a decimal point or a decimal comma.</summary>
internal static class CardNumber
{
    private static readonly QuantityRange Volts = QuantityRange.From(Dimension.Voltage, "V", -100, 100, "12.4 V");
    private static readonly QuantityRange Amperes = QuantityRange.From(Dimension.Current, "A", -10_000, 10_000, "3.2 A");

    /// <param name="text">Of the cell.</param>
    /// <param name="unit">Of a number without one; empty: that of the kind.</param>
    /// <param name="kind">What was measured.</param>
    public static QuantityReading Read(string text, string unit, ReadingKind kind)
    {
        var range = kind == ReadingKind.BusVolts ? Volts : Amperes;
        var expected = $"{range.Dimension.Name} such as {range.Example}, with or without its unit, or an empty cell";
        var plain = text.Replace('\u2212', '-').Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace(',', '.');
        if (plain.Count(letter => letter == '.') > 1)
            return QuantityReading.Wrong("not-a-number", $"{Quoted.Of(text)} has more than one decimal sign", expected);
        if (plain.Length > 0 && (char.IsAsciiDigit(plain[^1]) || plain[^1] == '.'))
            plain = $"{plain} {(unit.Length > 0 ? unit : range.Unit)}";
        var reading = QuantityReader.Read(plain, range);
        return reading.Fault switch
        {
            null => reading,
            { Code: "not-a-quantity" or "number-not-finite" } => QuantityReading.Wrong("not-a-number", $"{Quoted.Of(text)} is not {range.Dimension.Name}", expected),
            var fault => QuantityReading.Wrong(fault.Code, fault.Message.Replace(Quoted.Of(plain), Quoted.Of(text), StringComparison.Ordinal), fault.Code == "out-of-range" ? fault.Expected : expected, fault.Nearest),
        };
    }
}
