using System.Collections.Immutable;

namespace Endurance.Cli.Logs;

/// <summary>A quantity that a log may hold, and how its column is headed.</summary>
/// <param name="Name">With its article, for messages.</param>
/// <param name="Words">Any of them in a heading names the signal.</param>
/// <param name="Letters">A heading of this letter alone, or with a unit, names it too.</param>
/// <param name="Units">Words that name a unit, with the factor to SI or degrees Celsius.</param>
/// <param name="Least">Lowest value a battery can have.</param>
/// <param name="Most">Highest value.</param>
/// <param name="Heading">As a file might head it.</param>
/// <param name="Example">A value.</param>
internal sealed record LogSignal(
    string Name,
    ImmutableArray<string> Words,
    ImmutableArray<string> Letters,
    ImmutableDictionary<string, double> Units,
    double Least,
    double Most,
    string Heading,
    string Example)
{
    /// <summary>Fahrenheit is the one unit with an offset, so it is marked instead of scaled.</summary>
    public const double Fahrenheit = -1;

    public static LogSignal Time { get; } = new(
        "a time", ["time", "elapsed", "timestamp", "datetime", "date", "seconds", "minutes", "hours"], ["t"],
        Named((1, ["s", "sec", "secs", "second", "seconds"]), (1e-3, ["ms"]), (60, ["min", "mins", "minute", "minutes"]), (3600, ["h", "hr", "hrs", "hour", "hours"])),
        -1e12, 1e12, "time_s, time_min, time_h, or time with timestamps", "2026-05-02 14:30:05.250");

    public static LogSignal Volts { get; } = new(
        "a voltage", ["voltage", "volts", "volt", "vbat"], ["v", "u"], Named((1, ["v", "volts", "volt"]), (1e-3, ["mv"])), 0, 100, "voltage or volts", "12.61");

    public static LogSignal Amperes { get; } = new(
        "a current", ["current", "amps", "amp", "amperes", "ampere", "ibat"], ["a", "i"], Named((1, ["a", "amps", "amp", "amperes", "ampere"]), (1e-3, ["ma"])), -10_000, 10_000, "current or amps", "-3.05");

    public static LogSignal Celsius { get; } = new(
        "a temperature", ["temperature", "temp", "celsius", "degc", "degf"], [], Named((1, ["c", "degc", "celsius"]), (Fahrenheit, ["f", "degf", "fahrenheit"])), -80, 150, "temperature", "23.4");

    public static ImmutableArray<LogSignal> All { get; } = [Time, Volts, Amperes, Celsius];

    /// <summary>Whether a heading, split into lower-case words, names this signal.</summary>
    public bool IsNamedBy(ImmutableArray<string> words) =>
        words.Any(word => Words.Contains(word, StringComparer.Ordinal))
        || (words.Length is 1 or 2 && Letters.Contains(words[0], StringComparer.Ordinal) && words.Skip(1).All(Units.ContainsKey));

    /// <summary>Factor of the unit that a heading names; <see langword="null"/>: it names none.</summary>
    public double? UnitIn(ImmutableArray<string> words) =>
        words.Reverse().Where(Units.ContainsKey).Select(word => (double?)Units[word]).FirstOrDefault();

    private static ImmutableDictionary<string, double> Named(params ReadOnlySpan<(double Factor, string[] Words)> units)
    {
        var named = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (var (factor, words) in units)
        {
            foreach (var word in words)
                named.Add(word, factor);
        }

        return named.ToImmutable();
    }
}
