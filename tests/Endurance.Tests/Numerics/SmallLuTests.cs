using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class SmallLuTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(12)]
    public void Solve_RandomMMatrix_GivesBackTheChosenSolution(int n)
    {
        var random = new Random(20 + n);
        for (var trial = 0; trial < 50; trial++)
        {
            var a = MMatrix(random, n);
            var x = Enumerable.Range(0, n).Select(_ => (random.NextDouble() * 20) - 10).ToArray();
            var b = Product(a, x);

            Assert.True(SmallLu.TryFactor(a, n));
            SmallLu.Solve(a, b, n);

            for (var i = 0; i < n; i++)
                Assert.Equal(x[i], b[i], 1e-9);
        }
    }

    [Fact]
    public void TryFactor_LadderOfOhmAndMicroOhm_KeepsItsAccuracy()
    {
        // Two nodes tied by 1 MS, each 1 S to ground, 2 A into the first: both at 1 V but for a microvolt.
        double[] a = [1e6 + 1, -1e6, -1e6, 1e6 + 1];
        double[] b = [2, 0];

        Assert.True(SmallLu.TryFactor(a, 2));
        SmallLu.Solve(a, b, 2);

        Assert.Equal(1.0000004999998, b[0], 1e-9);
        Assert.Equal(0.9999995000003, b[1], 1e-9);
    }

    public static TheoryData<string, double[], int> Refused => new()
    {
        { "a singular pair without ground", [1, -1, -1, 1], 2 },
        { "a zero", [0], 1 },
        { "a negative diagonal", [-1, 0, 0, 1], 2 },
        { "not an M-matrix in its second pivot", [1, -2, -2, 1], 2 },
        { "not a number", [double.NaN], 1 },
        { "a third pivot of minus one half", [1, -1, 0, -1, 3, -1, 0, -1, 0], 3 },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void TryFactor_PivotNotPositive_Refuses(string what, double[] matrix, int n) => Assert.False(SmallLu.TryFactor(matrix, n), what);

    private static double[] MMatrix(Random random, int n)
    {
        var a = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            a[(i * n) + i] += Math.Pow(10, (random.NextDouble() * 4) - 2);
            for (var j = 0; j < i; j++)
            {
                if (random.NextDouble() < 0.5)
                    continue;
                var g = Math.Pow(10, (random.NextDouble() * 6) - 3);
                a[(i * n) + i] += g;
                a[(j * n) + j] += g;
                a[(i * n) + j] -= g;
                a[(j * n) + i] -= g;
            }
        }

        return a;
    }

    private static double[] Product(double[] a, double[] x)
    {
        var n = x.Length;
        return [.. Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Sum(j => a[(i * n) + j] * x[j]))];
    }
}
