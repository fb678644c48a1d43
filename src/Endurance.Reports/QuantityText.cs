using Endurance.Studies.Adjustment;

namespace Endurance.Reports;

/// <summary>Values of adjustable quantities in the units that people use.</summary>
internal static class QuantityText
{
    private const int Decimals = 6;

    /// <summary>Symbol of the unit; empty for a bare number.</summary>
    public static string Unit(QuantityKind kind) => kind switch
    {
        QuantityKind.Number => "",
        QuantityKind.Fraction => "%",
        QuantityKind.Volts => "V",
        QuantityKind.Amperes => "A",
        QuantityKind.Ohms => "ohm",
        QuantityKind.Watts => "W",
        QuantityKind.Charge => "Ah",
        QuantityKind.Duration => "min",
        QuantityKind.Temperature => "degC",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind."),
    };

    /// <summary>An SI value in that unit.</summary>
    public static double InUnit(QuantityKind kind, double si) => kind switch
    {
        QuantityKind.Fraction => si * 100,
        QuantityKind.Charge => si / 3600,
        QuantityKind.Duration => si / 60,
        QuantityKind.Temperature => si - 273.15,
        _ => si,
    };

    public static string Number(QuantityKind kind, double si) => RoundedNumber.Short(InUnit(kind, si), Decimals);

    /// <summary>Number and unit: two decimals at most, or five where the number is below 0.1.</summary>
    public static string WithUnit(QuantityKind kind, double si)
    {
        var value = InUnit(kind, si);
        return $"{RoundedNumber.Short(value, Math.Abs(value) < 0.1 ? 5 : 2)} {Unit(kind)}".TrimEnd();
    }
}
