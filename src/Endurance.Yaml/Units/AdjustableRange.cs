using Endurance.Studies.Adjustment;

namespace Endurance.Yaml.Units;

/// <summary>How the values of an adjustable quantity are written, and within which limits.</summary>
internal static class AdjustableRange
{
    public static QuantityRange Of(AdjustableQuantity quantity)
    {
        var (dimension, unit, factor, example) = Form(quantity.Kind);
        var zero = dimension == Dimension.Temperature ? dimension.Find(unit)!.Offset : 0;
        double InUnit(double si) => Rounded((si - zero) / factor);
        return QuantityRange.From(dimension, unit, InUnit(quantity.Lowest), InUnit(quantity.Highest), example);
    }

    /// <summary>For a width of the same kind, such as a standard deviation: above zero, at most the whole range.</summary>
    public static QuantityRange OfWidth(AdjustableQuantity quantity)
    {
        var (dimension, unit, factor, example) = Form(quantity.Kind);
        var width = Rounded((quantity.Highest - quantity.Lowest) / factor);
        return QuantityRange.Above(dimension == Dimension.Temperature ? Dimension.TemperatureDifference : dimension, unit, 0, width, example);
    }

    private static (Dimension Dimension, string Unit, double Factor, string Example) Form(QuantityKind kind) => kind switch
    {
        QuantityKind.Fraction => (Dimension.Fraction, "%", 0.01, "80 %"),
        QuantityKind.Volts => (Dimension.Voltage, "V", 1, "12.5 V"),
        QuantityKind.Amperes => (Dimension.Current, "A", 1, "2 A"),
        QuantityKind.Ohms => (Dimension.Resistance, "ohm", 1, "3 mohm"),
        QuantityKind.Watts => (Dimension.Power, "W", 1, "28 W"),
        QuantityKind.Charge => (Dimension.Charge, "Ah", 3600, "18 Ah"),
        QuantityKind.Duration => (Dimension.Time, "min", 60, "2 min"),
        QuantityKind.Temperature => (Dimension.Temperature, "degC", 1, "5 degC"),
        QuantityKind.Number => (Dimension.Number, "", 1, "1.1"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of quantity."),
    };

    // Keeps 193.15 K from being told as -79.99999999999997 degC.
    private static double Rounded(double value) => Math.Round(value, 9);
}
