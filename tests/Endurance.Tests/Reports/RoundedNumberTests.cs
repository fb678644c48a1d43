using Endurance.Reports;

namespace Endurance.Tests.Reports;

public sealed class RoundedNumberTests
{
    [Theory]
    [InlineData(-0.0, 4, "0")]
    [InlineData(-0.00004, 4, "0")]
    [InlineData(-0.00006, 4, "-0.0001")]
    [InlineData(83.21404, 4, "83.214")]
    [InlineData(1234567.25, 2, "1234567.25")]
    [InlineData(0.1234567, 7, "0.1234567")]
    public void Short_Number_HasNoTrailingZerosAndNoNegativeZero(double value, int decimals, string expected) =>
        Assert.Equal(expected, RoundedNumber.Short(value, decimals));

    [Theory]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(30.0, 1, "30.0")]
    [InlineData(0.05, 1, "0.1")]
    public void Fixed_Number_KeepsItsDecimals(double value, int decimals, string expected) =>
        Assert.Equal(expected, RoundedNumber.Fixed(value, decimals));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Short_NotFinite_Throws(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => RoundedNumber.Short(value, 3));
}
