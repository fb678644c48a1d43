using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class CrossingFinderTests
{
    public static TheoryData<string, Func<double, double>> Falling => new()
    {
        { "a line", x => 0.3 - x },
        { "a steep curve", x => 1e-3 - Math.Pow(x, 9) },
        { "a square root near its end", x => Math.Sqrt(Math.Max(0, 0.9 - x)) - 0.01 },
        { "a jump", x => x < 0.7 ? 5 : -1e-9 },
        { "a curve flat before its fall", x => 0.5 - Math.Exp(40 * (x - 0.99)) },
        { "zero at its start", x => -x },
        { "nearly due at its start", x => 1e-12 - x },
        { "due only at its end", x => x < 1 ? 1e-9 : -1 },
    };

    [Theory]
    [MemberData(nameof(Falling))]
    public void Narrow_FallingFunction_KeepsSignsAndReachesTheWidth(string what, Func<double, double> function)
    {
        const double tolerance = 1e-8;
        var counted = new Counted(function, new int[1]);

        var (left, right) = CrossingFinder.Narrow(ref counted, 0, function(0), 1, function(1), tolerance);

        Assert.True(function(left) >= 0, what);
        Assert.True(function(right) < 0, what);
        Assert.InRange(right - left, 0, tolerance);
        Assert.InRange(counted.Calls[0], 1, 15 + 27); // 2^27 > 1/tolerance
    }

    [Fact]
    public void Narrow_Line_NeedsThreeEvaluations()
    {
        var counted = new Counted(x => 0.4 - x, new int[1]);

        CrossingFinder.Narrow(ref counted, 0, 0.4, 1, -0.6, 1e-8);

        Assert.InRange(counted.Calls[0], 1, 3);
    }

    [Fact]
    public void Narrow_IntervalAlreadyNarrow_AsksNothing()
    {
        var counted = new Counted(x => 0.5 - x, new int[1]);

        var found = CrossingFinder.Narrow(ref counted, 0.4999, 1e-4, 0.5001, -1e-4, 1e-3);

        Assert.Equal((0.4999, 0.5001), found);
        Assert.Equal(0, counted.Calls[0]);
    }

    private readonly struct Counted(Func<double, double> function, int[] calls) : CrossingFinder.IFunction
    {
        public int[] Calls => calls;

        public double At(double x)
        {
            calls[0]++;
            return function(x);
        }
    }
}
