using Endurance.Reports;

namespace Endurance.Tests.Reports;

public sealed class AsciiTextTests
{
    [Theory]
    [InlineData("plain ~ text\n", "plain ~ text\n")]
    [InlineData("5 m\u03A9 \u00B1 2 \u00B5A at 20 \u00B0C", "5 mohm +- 2 uA at 20 degC")]
    [InlineData("\u00DCbungsst\u00FCck, gr\u00F6\u00DFer", "Ubungsstuck, grosser")]
    [InlineData("\u98DB\u884C\u6A5F \U0001F6E9", "??? ?")]
    public void Text_BeyondAscii_IsSpeltOut(string text, string expected) => Assert.Equal(expected, AsciiText.Of(text));

    [Fact]
    public void Report_BeyondAscii_IsSpeltOutEverywhere()
    {
        var document = new ReportDocument("\u03A9", [
            new ReportHeading("\u03A9"), new ReportParagraph("\u03A9"), new ReportList("\u03A9", ["\u03A9"]), new ReportCode("\u03A9", "yaml", "\u03A9"),
            new ReportTable("\u03A9", [new ReportColumn("\u03A9", "\u00B0C")], [[new ReportCell("\u03A9", CellTone.Good)]]),
        ]);

        var ascii = AsciiText.Of(document);

        Assert.Equal("ohm", ascii.Title);
        Assert.Equal("ohm", Assert.IsType<ReportHeading>(ascii.Blocks[0]).Text);
        Assert.Equal("ohm", Assert.IsType<ReportParagraph>(ascii.Blocks[1]).Text);
        Assert.Equal(["ohm", "ohm"], [Assert.IsType<ReportList>(ascii.Blocks[2]).Title, .. ((ReportList)ascii.Blocks[2]).Items]);
        Assert.Equal(new ReportCode("ohm", "yaml", "ohm"), ascii.Blocks[3]);
        var table = Assert.IsType<ReportTable>(ascii.Blocks[4]);
        Assert.Equal("ohm (degC)", Assert.Single(table.Columns).Label);
        Assert.Equal(new ReportCell("ohm", CellTone.Good), Assert.Single(Assert.Single(table.Rows)));
    }
}
