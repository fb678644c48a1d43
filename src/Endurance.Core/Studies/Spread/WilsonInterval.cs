namespace Endurance.Studies.Spread;

/// <summary>Bounds on a probability after so many trials.</summary>
/// <param name="Low">Lower bound, 0 to 1.</param>
/// <param name="High">Upper bound, 0 to 1.</param>
public readonly record struct WilsonInterval(double Low, double High)
{
    /// <summary>Standard normal quantile of a two-sided 95 % interval.</summary>
    private const double Z = 1.959963984540054;

    /// <summary>The 95 % score interval.</summary>
    /// <remarks>Wilson, J. Am. Stat. Assoc. 22 (1927) 209.</remarks>
    public static WilsonInterval Of(int successes, int trials)
    {
        if (trials <= 0)
            return new(0, 1);
        var n = (double)trials;
        var p = successes / n;
        var spread = Z * Z / n;
        var middle = (p + (spread / 2)) / (1 + spread);
        var half = Z / (1 + spread) * Math.Sqrt((p * (1 - p) / n) + (spread / (4 * n)));
        return new(Math.Max(0, middle - half), Math.Min(1, middle + half));
    }
}
