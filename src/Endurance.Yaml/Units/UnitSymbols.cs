namespace Endurance.Yaml.Units;

/// <summary>Other ways to write the units of the closed list.</summary>
internal static class UnitSymbols
{
    /// <summary>Spells the symbols for ohm, degree and micro as the closed list does.</summary>
    public static string Normalised(string unit) => unit
        .Replace("\u03A9", "ohm", StringComparison.Ordinal) // Greek capital omega
        .Replace("\u2126", "ohm", StringComparison.Ordinal) // ohm sign
        .Replace("\u00B0", "deg", StringComparison.Ordinal) // degree sign
        .Replace("\u00B5", "u", StringComparison.Ordinal) // micro sign
        .Replace("\u03BC", "u", StringComparison.Ordinal); // Greek small mu

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
