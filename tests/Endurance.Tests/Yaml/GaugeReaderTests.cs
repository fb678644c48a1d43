using Endurance.Yaml.Units;
using Xunit;

namespace Endurance.Tests.Yaml;

public class GaugeReaderTests
{
    [Theory]
    [InlineData("12 AWG", 12)]
    [InlineData("12AWG", 12)]
    [InlineData("0 AWG", 0)]
    [InlineData("1/0 AWG", 0)]
    [InlineData("00 AWG", -1)]
    [InlineData("2/0 AWG", -1)]
    [InlineData("000 AWG", -2)]
    [InlineData("4/0 AWG", -3)]
    [InlineData("0000AWG", -3)]
    public void Gauge_Legal_Reads(string text, int number) => Assert.Equal(number, GaugeReader.Read(text)?.Number);

    [Theory]
    [InlineData("12")]
    [InlineData("AWG")]
    [InlineData("12 awg")]
    [InlineData("5/0 AWG")]
    [InlineData("0/0 AWG")]
    [InlineData("00000 AWG")]
    [InlineData("012 AWG")]
    [InlineData("-4 AWG")]
    [InlineData("41 AWG")]
    [InlineData("12.5 AWG")]
    public void Gauge_Illegal_IsNothing(string text) => Assert.Null(GaugeReader.Read(text));
}
