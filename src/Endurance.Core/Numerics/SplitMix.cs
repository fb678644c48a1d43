namespace Endurance.Numerics;

/// <summary>A stream of even numbers from a seed; the same on every machine and in every version of the framework.</summary>
/// <remarks>SplitMix64: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014.</remarks>
internal struct SplitMix(long seed)
{
    private ulong state = (ulong)seed;

    /// <summary>From 0 up to, and not including, 1.</summary>
    public double NextDouble() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>From 0 up to, and not including, a bound above zero.</summary>
    public int Next(int bound) => (int)(NextDouble() * bound);

    private ulong Next()
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
