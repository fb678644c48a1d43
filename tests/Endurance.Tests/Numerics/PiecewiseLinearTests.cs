using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class PiecewiseLinearTests
{
    private static readonly PiecewiseLinear Table = PiecewiseLinear.FromPoints((0, 10), (0.5, 12), (1, 13));

    [Theory]
    [InlineData(-1, 10)]
    [InlineData(0, 10)]
    [InlineData(0.25, 11)]
    [InlineData(0.5, 12)]
    [InlineData(0.75, 12.5)]
    [InlineData(1, 13)]
    [InlineData(2, 13)]
    public void At_Abscissa_GivesTheStraightLineAndHoldsOutside(double x, double expected) => Assert.Equal(expected, Table.At(x), 1e-14);

    [Fact]
    public void Scaled_Table_MultipliesOrdinatesOnly()
    {
        var scaled = Table.Scaled(2);

        Assert.Equal(24, scaled.At(0.5), 1e-14);
        Assert.Equal(Table.X, scaled.X);
    }

    [Fact]
    public void Constructor_AbscissasThatDoNotRise_Refuses()
    {
        Assert.Throws<ArgumentException>(() => PiecewiseLinear.FromPoints((0, 1), (0, 2)));
        Assert.Throws<ArgumentException>(() => PiecewiseLinear.FromPoints((1, 1), (0, 2)));
        Assert.Throws<ArgumentException>(() => PiecewiseLinear.FromPoints((0, 1), (double.NaN, 2)));
        Assert.Throws<ArgumentException>(() => PiecewiseLinear.FromPoints());
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([0, 1], [1]));
    }

    [Fact]
    public void Equality_SamePoints_IsByValue()
    {
        Assert.Equal(Table, PiecewiseLinear.FromPoints((0, 10), (0.5, 12), (1, 13)));
        Assert.NotEqual(Table, PiecewiseLinear.FromPoints((0, 10), (0.5, 12.1), (1, 13)));
        Assert.Equal(Table.GetHashCode(), PiecewiseLinear.FromPoints((0, 10), (0.5, 12), (1, 13)).GetHashCode());
    }

    [Fact]
    public void Raised_ByAnAmount_AddsItEverywhere()
    {
        var raised = new PiecewiseLinear([0, 1], [10, 12]).Raised(0.5);

        Assert.Equal(10.5, raised.At(0), 1e-15);
        Assert.Equal(12.5, raised.At(1), 1e-15);
    }

    [Fact]
    public void Equals_AnotherTable_ComparesBothAxes()
    {
        var table = new PiecewiseLinear([0, 1], [10, 12]);

        Assert.True(table.Equals(new PiecewiseLinear([0, 1], [10, 12])));
        Assert.False(table.Equals(new PiecewiseLinear([0, 2], [10, 12])));
        Assert.False(table.Equals(new PiecewiseLinear([0, 1], [10, 13])));
        Assert.False(table.Equals(null));
    }
}
