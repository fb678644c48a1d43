using Endurance.Studies.Adjustment;
using Endurance.Yaml.Units;

namespace Endurance.Cli.Arguments;

/// <summary>What may be typed for an adjustable quantity.</summary>
internal static class QuantityRanges
{
    /// <summary>Its kind and its bounds.</summary>
    public static QuantityRange Of(AdjustableQuantity quantity)
    {
        var (dimension, unit, perUnit, zero, example) = quantity.Kind switch
        {
            QuantityKind.Fraction => (Dimension.Fraction, "%", 0.01, 0.0, "80 %"),
            QuantityKind.Volts => (Dimension.Voltage, "V", 1, 0, "0.5 V"),
            QuantityKind.Amperes => (Dimension.Current, "A", 1, 0, "2 A"),
            QuantityKind.Ohms => (Dimension.Resistance, "ohm", 1, 0, "5 mohm"),
            QuantityKind.Watts => (Dimension.Power, "W", 1, 0, "40 W"),
            QuantityKind.Charge => (Dimension.Charge, "Ah", 3600, 0, "18 Ah"),
            QuantityKind.Duration => (Dimension.Time, "min", 60, 0, "5 min"),
            QuantityKind.Temperature => (Dimension.Temperature, "degC", 1, 273.15, "5 degC"),
            _ => (Dimension.Number, "", 1.0, 0.0, "1.2"),
        };
        return QuantityRange.From(dimension, unit, (quantity.Lowest - zero) / perUnit, (quantity.Highest - zero) / perUnit, example);
    }
}
