using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class SplitMixTests
{
    /// <summary>First outputs for seed 1234567 of the authors' published reference code, splitmix64.c by S. Vigna; a double takes the upper 53 bits.</summary>
    private static readonly ulong[] Published = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];

    [Fact]
    [Trait("Kind", "Validation")]
    public void NextDouble_OfThePublishedSeed_GivesThePublishedStream()
    {
        var random = new SplitMix(1234567);

        foreach (var bits in Published)
            Assert.Equal((bits >> 11) / (double)(1UL << 53), random.NextDouble());
    }

    [Fact]
    public void Next_OfABound_ReachesEveryNumberBelowItAlikeOften()
    {
        var random = new SplitMix(7);
        var counts = new int[6];

        for (var i = 0; i < 6000; i++)
            counts[random.Next(6)]++;

        Assert.All(counts, count => Assert.InRange(count, 850, 1150));
    }
}
