using System.Globalization;

namespace Endurance.Reports;

/// <summary>Numbers as text in the invariant culture.</summary>
/// <remarks>Never a negative zero, an exponent, NaN or an infinity: a number that is not finite is a fault of the program and throws.</remarks>
internal static class RoundedNumber
{
    private static readonly string[] Shortest = ["0", "0.#", "0.##", "0.###", "0.####", "0.#####", "0.######", "0.#######"];
    private static readonly string[] Padded = ["0", "0.0", "0.00", "0.000", "0.0000", "0.00000", "0.000000", "0.0000000"];

    /// <summary>At most so many decimals (0 to 7), without trailing zeros.</summary>
    public static string Short(double value, int decimals) => Format(value, decimals, Shortest);

    /// <summary>Exactly so many decimals (0 to 7).</summary>
    public static string Fixed(double value, int decimals) => Format(value, decimals, Padded);

    private static string Format(double value, int decimals, string[] formats)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A report cannot print a number that is not finite.");
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        // Adding zero turns a negative zero into a plain one.
        return (rounded + 0.0).ToString(formats[decimals], CultureInfo.InvariantCulture);
    }
}
