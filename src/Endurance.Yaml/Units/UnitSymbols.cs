using System.Collections.Immutable;

namespace Endurance.Yaml.Units;

/// <summary>Other ways to write the units of the closed list.</summary>
internal static class UnitSymbols
{
    private static readonly ImmutableArray<(string Symbol, string Letters)> Spellings =
    [
        ("\u03A9", "ohm"), // Greek capital omega
        ("\u2126", "ohm"), // ohm sign
        ("\u00B0", "deg"), // degree sign
        ("\u00B5", "u"), // micro sign
        ("\u03BC", "u"), // Greek small mu
    ];

    /// <summary>Spells the symbols for ohm, degree and micro as the closed list does.</summary>
    public static string Normalised(string unit) => Spellings.Aggregate(unit, (text, spelling) => text.Replace(spelling.Symbol, spelling.Letters, StringComparison.Ordinal));

    /// <summary>A regular expression of ECMA-262 for a unit of the closed list in all its spellings.</summary>
    public static string Pattern(string unit) => Spellings
        .Select(spelling => spelling.Letters).Distinct(StringComparer.Ordinal)
        .Aggregate(unit, (text, letters) => text.Replace(letters, $"({letters}|{string.Join('|', Spellings.Where(spelling => spelling.Letters == letters).Select(spelling => spelling.Symbol))})", StringComparison.Ordinal));

    /// <summary>The unit someone meant who spelt it out; <see langword="null"/> when it is not of this kind.</summary>
    public static string? MeantBy(string unit, Dimension dimension)
    {
        var meant = unit.ToLowerInvariant() switch
        {
            "volt" or "volts" or "vdc" => "V",
            "amp" or "amps" or "ampere" or "amperes" => "A",
            "watt" or "watts" => "W",
            "ohms" => "ohm",
            "milliohm" or "milliohms" => "mohm",
            "hour" or "hours" or "hr" or "hrs" => "h",
            "minute" or "minutes" or "mins" or "m" => "min",
            "second" or "seconds" or "sec" or "secs" => "s",
            "c" or "celsius" => "degC",
            "f" or "fahrenheit" => "degF",
            "percent" or "pct" => "%",
            "foot" or "feet" => "ft",
            "inch" or "inches" => "in",
            "metre" or "meter" or "metres" or "meters" => "m",
            "ga" or "gauge" => "AWG",
            _ => "",
        };
        return dimension.Find(meant)?.Symbol;
    }
}
