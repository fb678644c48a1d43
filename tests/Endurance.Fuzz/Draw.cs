using System.Globalization;
using Endurance.Yaml.Keys;
using Endurance.Yaml.Units;

namespace Endurance.Fuzz;

/// <summary>Draws everything that a seed decides.</summary>
/// <param name="seed">The same seed draws the same values.</param>
/// <param name="isWild">Some quantities come from the edges of their whole range instead of from everyday values.</param>
internal sealed class Draw(int seed, bool isWild)
{
    /// <summary>One quantity in so many of a wild text is extreme.</summary>
    private const int Rarity = 8;

    /// <summary>The smallest extreme value over the example of a key, where a range begins at zero.</summary>
    private const double Smallest = 1e-4;

    private readonly Random random = new(seed);

    /// <summary>From 0 up to, and not including, a bound.</summary>
    public int Next(int bound) => random.Next(bound);

    public bool OneIn(int number) => random.Next(number) == 0;

    public double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    public T Any<T>(params ReadOnlySpan<T> values) => values[random.Next(values.Length)];

    /// <summary><c>key: value</c> with a value that is everyday between two numbers in the unit of the key's range, or extreme within that range.</summary>
    public string Pair(Section section, string key, double low, double high)
    {
        var range = section.Find(key)?.Range ?? throw new InvalidOperationException($"{section.Kind} has no quantity {key}.");
        var value = isWild && OneIn(Rarity) ? Extreme(range) : Between(low, high);
        return $"{key}: {Text(value, range.Unit)}";
    }

    /// <summary>The same in one case of so many; otherwise nothing.</summary>
    public string? Sometimes(int number, Section section, string key, double low, double high) =>
        OneIn(number) ? Pair(section, key, low, high) : null;

    public static string Text(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value:G6} {unit}").TrimEnd();

    /// <summary>A flow mapping of those pairs that there are.</summary>
    public static string Mapping(params IEnumerable<string?> pairs) => $"{{{string.Join(", ", pairs.Where(pair => pair is not null))}}}";

    private double Extreme(QuantityRange range)
    {
        var least = range.Dimension.Find(range.Unit) is { Offset: not 0 } ? double.NegativeInfinity : range.Least;
        if (OneIn(4))
            return range.Most;
        if (least < 0)
            return Between(range.Least, range.Most);
        if (range.IsLeastAllowed && OneIn(3))
            return least;
        var unit = range.Dimension.Find(range.Unit);
        var low = Math.Max(least, range.Placeholder / (unit?.Factor ?? 1) * Smallest);
        return low * Math.Pow(range.Most / low, random.NextDouble());
    }
}
