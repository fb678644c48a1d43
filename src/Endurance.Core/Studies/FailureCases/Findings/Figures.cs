using System.Globalization;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>How findings write numbers.</summary>
internal static class Figures
{
    public static string Minutes(Duration time) => string.Create(CultureInfo.InvariantCulture, $"{time.Minutes:0.#} min");

    public static string Amperes(Current current) => string.Create(CultureInfo.InvariantCulture, $"{current.Amperes:0.##} A");

    public static string Volts(Voltage voltage) => string.Create(CultureInfo.InvariantCulture, $"{voltage.Volts:0.##} V");

    public static string Percent(double fraction) => string.Create(CultureInfo.InvariantCulture, $"{fraction * 100:0} %");

    /// <summary>Names as a sentence lists them.</summary>
    public static string Names(params IReadOnlyList<string> names) => names.Count switch
    {
        0 => "",
        1 => names[0],
        _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
    };
}
