using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class EliminationTests
{
    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(40)]
    public void Solve_RandomSparseMMatrix_GivesBackTheChosenSolution(int n)
    {
        var random = new Random(40 + n);
        for (var trial = 0; trial < 20; trial++)
        {
            var ties = Enumerable.Range(1, n - 1).Select(i => (random.Next(i), i)).Concat(Enumerable.Range(0, n / 3).Select(_ => (random.Next(n), random.Next(n)))).ToList();
            var matrix = MMatrix(random, n, ties);
            var x = Enumerable.Range(0, n).Select(_ => (random.NextDouble() * 20) - 10).ToArray();
            var b = Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Sum(j => matrix[(i * n) + j] * x[j])).ToArray();
            var elimination = new Elimination(n, ties);

            Assert.True(elimination.TryFactor(matrix));
            elimination.Solve(matrix, b);

            for (var i = 0; i < n; i++)
                Assert.Equal(x[i], b[i], 1e-8);
        }
    }

    [Fact]
    public void TryFactor_StarFromItsCentre_FillsNothing()
    {
        const int n = 30;
        var ties = Enumerable.Range(1, n - 1).Select(i => (0, i)).ToList();
        var matrix = MMatrix(new Random(1), n, ties);

        Assert.True(new Elimination(n, ties).TryFactor(matrix));

        Assert.Equal(n + (2 * (n - 1)), matrix.Count(entry => entry != 0));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(20)]
    public void TryFactor_PivotNotPositive_RefusesUntilShifted(int n)
    {
        var ties = Enumerable.Range(1, n - 1).Select(i => (i - 1, i)).ToList();
        var matrix = MMatrix(new Random(2), n, ties);
        matrix[0] = -1;
        var elimination = new Elimination(n, ties);
        var factors = new double[n * n];

        Assert.False(elimination.TryFactor((double[])matrix.Clone()));
        Assert.True(elimination.TryFactorShifted(matrix, factors));
    }

    /// <summary>Conductances between tied rows, weaker one way, and a little to ground everywhere.</summary>
    private static double[] MMatrix(Random random, int n, IEnumerable<(int First, int Second)> ties)
    {
        var a = new double[n * n];
        for (var i = 0; i < n; i++)
            a[(i * n) + i] = 0.1 + random.NextDouble();
        foreach (var (i, j) in ties.Where(tie => tie.First != tie.Second))
        {
            var siemens = random.NextDouble() * 100;
            a[(i * n) + i] += siemens;
            a[(j * n) + j] += siemens;
            a[(i * n) + j] -= siemens;
            a[(j * n) + i] -= siemens * 0.5;
        }

        return a;
    }

    [Fact]
    public void TryFactorShifted_MatrixWithGoodPivots_FactorsItAsItIs()
    {
        double[] matrix = [3, -1, -1, 2];
        var factors = new double[4];

        Assert.True(Two.TryFactorShifted(matrix, factors));

        double[] x = [3 - 2, -1 + 4];
        Two.Solve(factors, x);
        Assert.Equal([1, 2], x.Select(value => Math.Round(value, 12)));
    }

    [Theory]
    [InlineData(-5)]
    [InlineData(-1e6)]
    public void TryFactorShifted_PivotBelowZero_AddsEnoughToTheWholeDiagonalAndNotFarMore(double pivot)
    {
        double[] matrix = [pivot, 0, 0, 2];
        var factors = new double[4];

        Assert.True(Two.TryFactorShifted(matrix, factors));

        double[] x = [1, 1];
        Two.Solve(factors, x);
        var shift = (1 / x[1]) - 2;
        Assert.InRange(shift, -pivot, -4 * pivot);
        Assert.Equal(pivot + shift, 1 / x[0], Math.Abs(pivot) * 1e-9);
        Assert.Equal(pivot, matrix[0]);
    }

    [Fact]
    public void TryFactorShifted_MatrixThatIsNoNumber_GivesUp() => Assert.False(new Elimination(1, []).TryFactorShifted([double.NaN], new double[1]));

    private static Elimination Two => new(2, [(0, 1)]);

    /// <summary>Two rows tied by 1e4 and to all else by 1e-13, which is below a unit in the last place of the diagonal; a hundred-millionth too little is no rounding.</summary>
    [Fact]
    public void TryFactor_OfACopy_PutsBackOnlyWhatRoundingTook()
    {
        double[] tied = [1e4, -1e4, -1e4, 1e4], unstable = [1e4, -1e4, -1e4, 1e4 - 1e-4];
        var elimination = new Elimination(2, [(0, 1)]);
        var factors = new double[4];

        Assert.False(elimination.TryFactor((double[])tied.Clone()));
        Assert.True(elimination.TryFactor(tied, factors));
        Assert.False(elimination.TryFactor(unstable, factors));
    }
}
