using Endurance.Reports.Plots;

namespace Endurance.Tests.Reports;

public sealed class SvgNumbersTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("M1 2L3.5 4.25", "M1 2L3.5 4.25")]
    [InlineData("M1.234 -5.678Z", "M1.23 -5.68Z")]
    [InlineData("1.235,1.2349", "1.24,1.23")]
    [InlineData("9.995 99.999 -0.996", "10 100 -1")]
    [InlineData("-0.001 0.004", "0 0")]
    [InlineData("1.200 1.003 1.050", "1.2 1 1.05")]
    [InlineData("1.19209e-07 2.500e2", "0 250")]
    [InlineData("1.234e", "1.23e")]
    [InlineData("12345678901.234", "12345678901.23")]
    [InlineData(".1234 a.b 1.2.3456", ".1234 a.b 1.2.3456")]
    [InlineData("1.5 2.7182818", "1.5 2.72")]
    public void Numbers_OfManyDecimals_AreRoundedToTwo(string svg, string expected) => Assert.Equal(expected, SvgNumbers.Rounded(svg));
}
