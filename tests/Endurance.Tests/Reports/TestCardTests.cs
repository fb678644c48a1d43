using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Reports.Html;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reports;

public sealed class TestCardTests
{
    /// <summary>12 V behind 100 mohm, one feed of 20 mohm with a switch and an ideal controller, 2 A: 11.8 V and, at 20 mV regulated drop or more, 11.74 V.</summary>
    private static Scenario Small(string display = "display") => Scenario(horizonHours: 1) with
    {
        Title = "Bench",
        Buses = [Bus("battery_bus"), Bus("essential_bus", 10)],
        Batteries = [Battery("ship_battery", "battery_bus", 20, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(100))],
        Feeds =
        [
            Feed("essential_feed", "battery_bus", "essential_bus", 20, new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.FromVolts(0.02) })
                with { Switch = new Switch { IsClosed = true } },
        ],
        Loads = [Amperes(display, "essential_bus", 2, 9)],
        FailureCases = [Case(At(1, (ActionVerb.Shed, display)))],
        Requirements = [new Requirement { Loads = [display], Endure = Duration.FromMinutes(10) }],
    };

    [Fact]
    public void Card_OfASmallScenario_IsTheAgreedMarkdown() =>
        GoldenText.AssertMatches("testcard.md", MarkdownReport.Write(TestCardReport.Describe(GroundTestStudy.Plan(Small()))));

    [Fact]
    public void Csv_OfASmallScenario_IsTheAgreedText() =>
        GoldenText.AssertMatches("testcard.csv", TestCardCsv.Write(GroundTestStudy.Plan(Small())).ReplaceLineEndings("\n"));

    [Fact]
    public void Load_ThatNoGroundSourceRuns_SaysSo()
    {
        var starter = Scenario() with { Buses = [Bus("bus")], Loads = [Amperes("starter", "bus", 200, 5)] };

        var point = Assert.Single(GroundTestStudy.Plan(starter).Points);

        Assert.Equal("starter alone", point.Title);
        Assert.Equal(0, Assert.Single(point.Readings, reading => reading.Kind == ReadingKind.LoadAmperes).Predicted);
        Assert.Equal("No source that can be used with the engine stopped runs it: this point proves only that it stays off.", point.Remarks[^1]);
    }

    [Fact]
    public void Csv_OfANameThatIsAFormula_IsText()
    {
        var lines = TestCardCsv.Write(GroundTestStudy.Plan(Small("=1+2,\"x"))).Split("\r\n");

        var row = Assert.Single(lines, line => line.Contains("load =1+2", StringComparison.Ordinal));
        Assert.StartsWith("T5,\"'=1+2,\"\"x alone\",\"load =1+2,\"\"x\",A,2.00,0.20,,", row, StringComparison.Ordinal);
        Assert.DoesNotContain(lines, line => line.Split(',').Any(cell => cell.TrimStart('"') is ['=' or '+' or '@', ..]));
    }

    [Fact]
    public void Page_OfANameThatIsMarkup_ShowsItAsText()
    {
        var page = HtmlPage.Write(TestCardReport.Describe(GroundTestStudy.Plan(Small("<script>alert('&')</script>"))));

        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(&#39;&amp;&#39;)&lt;/script&gt; alone", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_NeedsNothingFromOutside()
    {
        var page = HtmlPage.Write(TestCardReport.Describe(GroundTestStudy.Plan(Small())));

        Assert.StartsWith("<!DOCTYPE html>\n<html lang=\"en\">", page, StringComparison.Ordinal);
        Assert.DoesNotContain("://", page, StringComparison.Ordinal);
        Assert.DoesNotContain("url(", page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=", page, StringComparison.Ordinal);
        Assert.Contains("<td class=\"words\"></td>", page, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", page, StringComparison.Ordinal);
    }
}
