using System.Collections.Immutable;
using System.Text.Json;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.SingleFailures;
using Endurance.Studies.Sizing;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reports;

public sealed class StudyReportTests
{
    private static readonly Scenario TwoBatteries = StudyFixture.Scenario with
    {
        Buses = [Bus("main_bus"), Bus("backup_bus")],
        Batteries = [.. StudyFixture.Scenario.Batteries, StudyFixture.Scenario.Batteries[0] with { Name = "backup_battery", Bus = "backup_bus" }],
        Feeds = [Feed("backup_feed", "backup_bus", "main_bus", 1, Schottky(20, 1.05, 6))],
        Loads = [Amperes("display", "main_bus", 5, 9), Amperes("radio", "main_bus", 1, 9)],
        Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(150) }],
    };

    /// <summary>90 min at 5 A are 7.5 Ah; twelve minutes an ampere-hour.</summary>
    [Fact]
    public void SizingJson_OfACapacity_HoldsExactlyTheFixedKeys()
    {
        using var json = JsonDocument.Parse(SizingJson.Write(StudyFixture.Scenario, StudyFixture.Size(SizingFind.Capacity, "main_battery"), withOffers: false));
        var root = json.RootElement;

        Assert.Equal(["battery", "required_capacity_amp_hours", "limited_by", "curve"], root.EnumerateObject().Select(property => property.Name));
        Assert.Equal(7.5, root.GetProperty("required_capacity_amp_hours").GetDouble(), 7.5 * 1e-3);
        Assert.Equal("engine_out", root.GetProperty("limited_by").GetProperty("case").GetString());
        Assert.Equal("display", root.GetProperty("limited_by").GetProperty("load").GetString());
        Assert.All(
            root.GetProperty("curve").EnumerateArray().Where(point => point.GetProperty("endurance_minutes").ValueKind == JsonValueKind.Number),
            point => Assert.Equal(point.GetProperty("capacity_amp_hours").GetDouble() * 12, point.GetProperty("endurance_minutes").GetDouble(), 0.01));
        Assert.Equal(JsonValueKind.Null, root.GetProperty("curve")[24].GetProperty("endurance_minutes").ValueKind);
    }

    /// <summary>A least value goes up and a most value down, so that a program which runs with the number finds every requirement met.</summary>
    [Theory]
    [InlineData(SizingFind.Capacity, "main_battery", 7.50001 * 3600, 7.5001)]
    [InlineData(SizingFind.Load, "main_bus", 1.23456, 1.2345)]
    public void SizingJson_Limit_IsRoundedTowardsWhatPasses(SizingFind find, string subject, double limit, double told)
    {
        var answer = StudyFixture.Size(find, subject);

        using var json = JsonDocument.Parse(SizingJson.Write(StudyFixture.Scenario, answer with { Limit = answer.Limit with { Limit = limit } }, withOffers: false));

        Assert.Equal(told, json.RootElement.GetProperty(find == SizingFind.Load ? "most_extra_load_amps" : "required_capacity_amp_hours").GetDouble());
    }

    [Theory]
    [InlineData(SizingFind.Capacity, "main_battery", "size-capacity")]
    [InlineData(SizingFind.Load, "main_bus", "size-load")]
    [InlineData(SizingFind.Delay, "", "size-delay")]
    [InlineData(SizingFind.ShedTime, "", "size-shed_time")]
    [InlineData(SizingFind.Health, "main_battery", "size-health")]
    public void Sizing_InEveryForm_IsTheExpectedText(SizingFind find, string subject, string golden)
    {
        var answer = StudyFixture.Size(find, subject);

        GoldenText.AssertMatches(golden + ".json", SizingJson.Write(StudyFixture.Scenario, answer, withOffers: find == SizingFind.Capacity));
        GoldenText.AssertMatches(golden + ".md", MarkdownReport.Write(SizingReport.Describe(StudyFixture.Scenario, answer, withOffers: true)));
        GoldenText.AssertMatches(golden + ".txt", PlotDescriptionText.Write(SizingPlot.Describe(StudyFixture.Scenario, answer)));
    }

    [Fact]
    public void SizingReport_OfACapacity_NamesTheSmallestOfferThatPassesAndWhatIsAssumed()
    {
        var text = MarkdownReport.Write(SizingReport.Describe(StudyFixture.Scenario, StudyFixture.Size(SizingFind.Capacity, "main_battery"), withOffers: false));

        Assert.Contains("the smallest that passes is middle: 8 Ah at 20 h, 3.9 kg.", text, StringComparison.Ordinal);
        Assert.Contains("resistance falls as 1/capacity", text, StringComparison.Ordinal);
    }

    /// <summary>A resistance of the library follows health, and the report must not say that it stays.</summary>
    [Fact]
    public void SizingReport_OfTheHealthOfABatteryOfTheLibrary_SaysThatItsResistanceGrows()
    {
        var battery = StudyFixture.Scenario.Batteries[0];
        var scenario = StudyFixture.Scenario with { Batteries = [battery with { ResistanceWhenNew = battery.Resistance }] };
        var answer = SizingStudy.Answer(scenario, new SizingQuestion { Find = SizingFind.Health, Subject = battery.Name }, new SimulationOptions());

        Assert.Contains("the resistance, which is of the library, grows as 1/health.", MarkdownReport.Write(SizingReport.Describe(scenario, answer, withOffers: false)), StringComparison.Ordinal);
    }

    [Fact]
    public void FailureJson_EveryRow_HoldsExactlyTheFixedKeys()
    {
        var standing = StudyFixture.Failures(TwoBatteries);
        using var json = JsonDocument.Parse(FailureJson.Write(standing));

        var rows = json.RootElement.GetProperty("rows").EnumerateArray().ToList();
        Assert.Equal(standing.Rows.Length, rows.Count);
        Assert.All(rows, row => Assert.Equal(
            ["part", "mode", "case", "endurance_minutes", "verdict", "lost", "revealed_by"], row.EnumerateObject().Select(property => property.Name)));
        GoldenText.AssertMatches("failures.json", FailureJson.Write(standing));
    }

    [Fact]
    public void FailureReport_OfTwoBatteries_LeadsWithWhatTakesTheMost()
    {
        var document = FailureReport.Describe(StudyFixture.Failures(TwoBatteries), "engine_out");
        var headline = Assert.IsType<ReportTable>(document.Blocks[0]);

        Assert.Equal("main_bus, short to ground", headline.Rows[0][1].Text);
        Assert.Equal("takes every load of: display 150 min", headline.Rows.First(row => row[0].Text.StartsWith("takes every", StringComparison.Ordinal))[0].Text);
        GoldenText.AssertMatches("failures.md", MarkdownReport.Write(document));
    }

    [Fact]
    public void FailureHeatMap_OfACase_HasAWordOrANumberInEveryCell()
    {
        var standing = StudyFixture.Failures(TwoBatteries);
        var plot = FailureHeatMap.Describe(standing, "engine_out")!;

        Assert.Equal(["display", "radio"], plot.Grid!.Columns.AsEnumerable());
        Assert.All(plot.Grid.Cells.SelectMany(row => row), cell => Assert.NotEmpty(cell.Text));
        // Nothing is required of the radio.
        Assert.All(plot.Grid.Cells, row => Assert.Equal(BarKind.NothingRequired, row[1].Kind));
        GoldenText.AssertMatches("failures.txt", PlotDescriptionText.Write(plot));
        Assert.NotEmpty(PlotRenderer.Png(plot));
    }

    [Fact]
    public void FailureStanding_OfPairs_LeavesOutWhatOneFailureAloneDoes()
    {
        var required = TwoBatteries with { Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(60) }] };
        var standing = new FailureStanding(required, SingleFailureStudy.Run(required, new SingleFailureOptions { Pairs = true }), [], SingleFailureStudy.Run(required, new SingleFailureOptions()));

        // Either battery alone lasts 100 min at 6 A; without both there is nothing.
        Assert.Contains(standing.Losing, row => row.Part == "main_battery + backup_battery" && row.Mode == "open + open");
        Assert.DoesNotContain(standing.Losing, row => row.Part.Contains("main_bus", StringComparison.Ordinal));
    }

    [Fact]
    public void Spread_InEveryForm_IsTheExpectedText()
    {
        var result = StudyFixture.Spread();

        GoldenText.AssertMatches("spread.json", SpreadJson.Write(result));
        GoldenText.AssertMatches("spread.md", MarkdownReport.Write(SpreadReport.Describe(result)));
        GoldenText.AssertMatches("spread.csv", SpreadCsv.Write(result));
        GoldenText.AssertMatches("spread.txt", PlotDescriptionText.Write(SpreadPlot.Describe(result, result.Cases[0])!) + PlotDescriptionText.Write(SensitivityPlot.Describe(result, 0)!));
    }

    [Fact]
    public void SpreadPlot_ColumnsAndWhatLastsLonger_AreAllSamples()
    {
        var result = StudyFixture.Spread();
        var plot = SpreadPlot.Describe(result, result.Cases[0])!;

        Assert.Equal(100, plot.Panels[0].Columns.Sum(column => column.Height), 1e-9);
        Assert.Equal(["P5", "P50", "P95"], plot.Panels[0].Markers.Select(marker => marker.Text.Split(' ')[0]));
        Assert.NotEmpty(PlotRenderer.Svg(plot));
    }

    /// <summary>120 min at 5 A: 4.5 A gives 133.3, 5.5 A 109.1; health 62 to 98 % gives 74.4 to 117.6.</summary>
    [Fact]
    public void SensitivityPlot_TwoTolerances_StandLargestFirst()
    {
        var spans = SensitivityPlot.Describe(StudyFixture.Spread(), 0)!.Panels[0].Spans;

        Assert.Equal(["main_battery.health", "display.current"], spans.Select(span => span.Label));
        Assert.Equal(74.4, spans[0].Low, 0.01);
        Assert.Equal(117.6, spans[0].High, 0.01);
        Assert.Equal(120, spans[0].Base, 0.01);
    }

    [Fact]
    public void Sweep_InEveryForm_IsTheExpectedText()
    {
        var result = StudyFixture.Sweep();

        GoldenText.AssertMatches("sweep.json", SweepJson.Write(result));
        GoldenText.AssertMatches("sweep.md", MarkdownReport.Write(SweepReport.Describe(result)));
        GoldenText.AssertMatches("sweep.csv", SweepCsv.Write(result));
        GoldenText.AssertMatches("sweep.txt", PlotDescriptionText.Write(SweepPlot.Describe(result)));
    }

    /// <summary>10 Ah at 5 A are 120 min.</summary>
    [Fact]
    public void SweepPlot_OfHealth_IsInProportion()
    {
        ImmutableArray<PlotPoint> points = SweepPlot.Describe(StudyFixture.Sweep()).Panels[0].Series[0].Points;

        Assert.Equal([60, 80, 100], points.Select(point => Math.Round(point.X, 6)));
        Assert.Equal([72, 96, 120], points.Select(point => Math.Round(point.Y, 3)));
    }
}
