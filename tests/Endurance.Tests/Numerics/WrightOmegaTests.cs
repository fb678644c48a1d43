using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class WrightOmegaTests
{
    public static TheoryData<double> Arguments
    {
        get
        {
            var data = new TheoryData<double>();
            for (var z = -700.0; z <= 700; z += 12.5)
                data.Add(z);
            // On both sides of where the starting expansions take over from one another.
            foreach (var seam in new[] { -18.0, -2, 4 })
            {
                data.Add(seam - 1e-9);
                data.Add(seam + 1e-9);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Arguments))]
    public void At_AnyArgument_SatisfiesItsDefinition(double z)
    {
        var w = WrightOmega.At(z);

        Assert.Equal(z, w + Math.Log(w), 1e-14 * (1 + Math.Abs(z)));
    }

    [Theory]
    [Trait("Kind", "Validation")]
    [InlineData(0, 0.56714329040978387)] // the omega constant, W(1): Corless et al., Adv. Comp. Math. 5 (1996) 329
    [InlineData(1, 1)] // 1 + ln 1 = 1
    [InlineData(3.7182818284590452, 2.7182818284590452)] // e + ln e = e + 1
    [InlineData(2.6931471805599453, 2)] // 2 + ln 2
    [InlineData(-1.1362943611198906, 0.25)] // 0.25 + ln 0.25 = 0.25 - 2 ln 2
    public void At_KnownArgument_GivesKnownValue(double z, double expected) => Assert.Equal(expected, WrightOmega.At(z), 1e-15 * (1 + expected));

    [Theory]
    [MemberData(nameof(Arguments))]
    public void At_StartedFromANeighbour_GivesTheSame(double z)
    {
        foreach (var away in new[] { -100, -0.5, -0.3, 1e-6, 0.4, 0.5, 3 })
        {
            var started = WrightOmega.At(z, z + away, WrightOmega.At(z + away));

            Assert.Equal(WrightOmega.At(z), started, 2e-14 * (WrightOmega.At(z) * (1 + (Math.Abs(z) / (1 + WrightOmega.At(z))))));
        }
    }

    [Fact]
    public void At_FarBelow_GivesTheExponential()
    {
        Assert.Equal(Math.Exp(-40), WrightOmega.At(-40), Math.Exp(-40) * 1e-14);
        Assert.Equal(0, WrightOmega.At(-2000));
    }

    [Fact]
    public void At_RisingArgument_Rises()
    {
        var last = 0.0;
        for (var z = -30.0; z < 30; z += 0.01)
        {
            var w = WrightOmega.At(z);
            Assert.True(w > last, $"falls at {z}");
            last = w;
        }
    }
}
