using System.Collections.Immutable;
using Endurance.Reports;
using Endurance.Simulation;

namespace Endurance.Tests.Reports;

public sealed class FailureCaseCsvTests
{
    [Fact]
    public void Write_Fixture_HasOneRowACaseAndLoad()
    {
        var lines = FailureCaseCsv.Write(ReportFixture.Scenario, ReportFixture.Cases).Split("\r\n");

        Assert.Equal(1 + (3 * 5) + 1, lines.Length);
        Assert.Equal("case,case_verdict,case_endurance_minutes,load,bus,essential,was_connected,minutes_powered,minutes_lost_for_good,lost_because,minutes_shed,horizon_minutes,chattering", lines[0]);
        Assert.Equal("alternator_failure,pass,83.214,primary_display,essential_bus,yes,yes,83.214,83.214,below minimum,,240,", lines[1]);
        Assert.Equal("alternator_failure,pass,83.214,pitot_heat,main_bus,no,yes,,,,4.1,240,", lines[4]);
        Assert.Equal("normal,pass,,primary_display,essential_bus,yes,yes,,,,,240,", lines[11]);
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("say \"so\"", "\"say \"\"so\"\"\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+x", "'+x")]
    [InlineData("-x", "'-x")]
    [InlineData("@x", "'@x")]
    [InlineData("\tx", "'\tx")]
    [InlineData("\rx", "\"'\rx\"")]
    [InlineData("=HYPERLINK(\"u\",\"v\")", "\"'=HYPERLINK(\"\"u\"\",\"\"v\"\")\"")]
    [InlineData("", "")]
    public void FromPerson_Text_IsQuotedAndNeverAFormula(string text, string expected) => Assert.Equal(expected, CsvText.FromPerson(text));

    [Fact]
    public void TraceCsv_Names_BecomeHeadingsWithUnitsAndNumbersStayNumbers()
    {
        var trace = new Trace
        {
            Seconds = [0, 90, 90],
            BusVolts = [new TraceColumn("=bus", [12.5, 12.25, 0])],
            BatteryAmperes = [new TraceColumn("ship", [-1.5, -1e-9, 0])],
            BatteryCharge = [new TraceColumn("ship", [1, 0.98765432, 0.5])],
            FeedAmperes = [new TraceColumn("master", [3, 3, 0])],
        };

        Assert.Equal(
            "minutes,'=bus_volts,ship_amps,ship_charge_percent,master_amps\r\n0,12.5,-1.5,100,3\r\n1.5,12.25,0,98.7654,3\r\n1.5,0,0,50,0\r\n",
            TraceCsv.Write(trace));
    }

    [Fact]
    public void Write_CommaCulture_WritesTheSameText()
    {
        var trace = ReportFixture.Cases[0].Run.Trace!;
        var expected = FailureCaseCsv.Write(ReportFixture.Scenario, ReportFixture.Cases) + TraceCsv.Write(trace);

        Assert.Equal(expected, CommaCulture.Run(() => FailureCaseCsv.Write(ReportFixture.Scenario, ReportFixture.Cases) + TraceCsv.Write(trace)));
    }
}
