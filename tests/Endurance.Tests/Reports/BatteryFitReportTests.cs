using System.Text.Json;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Studies.BatteryFit;
using Endurance.Tests.Studies;
using Endurance.Yaml;

namespace Endurance.Tests.Reports;

public sealed class BatteryFitReportTests
{
    private static readonly BatteryFitResult Fit = BatteryFitStudy.Run(
        BenchLog.Of(BenchLog.Bench, hasPulses: true, 2, 5),
        new BatteryFitOptions { Rated = new RatedCapacity(Charge.FromAmpereHours(18), Duration.FromHours(20)) }).Result!;

    [Fact]
    public void Fragment_UnderBatteries_IsTakenByTheReaderAsTheFittedBattery()
    {
        var text = "endurance: 1\ntitle: Bench\nsystem: 14 V\nbatteries:\n" + BatteryFragment.Write("bench.csv", Fit)
            + "buses: {battery_bus: {}}\nloads: {lamp: {bus: battery_bus, current: 1 A}}\nfailure_cases: {discharge: {timeline: []}}\n";

        var read = ScenarioReader.ReadText("bench.yaml", text);

        Assert.Empty(read.Diagnostics);
        var battery = Assert.Single(read.Scenario!.Batteries);
        Assert.Equal(Fit.Written.EffectiveCapacity.AmpereHours, battery.EffectiveCapacity.AmpereHours, 1e-3);
        Assert.Equal(Fit.Written.PeukertExponent, battery.PeukertExponent, 1e-4);
        Assert.Equal(Fit.Written.Emf.At(0.5), battery.Emf.At(0.5), 1e-4);
        Assert.Equal(Fit.Resistance.Ohms, battery.Resistance.At(0.5), 1e-6);
    }

    [Fact]
    public void Json_Values_AreThoseOfTheFit()
    {
        using var json = JsonDocument.Parse(BatteryFitJson.Write("bench.csv", Fit));

        Assert.Equal("positive", json.RootElement.GetProperty("discharge_sign").GetString());
        Assert.Equal(2, json.RootElement.GetProperty("runs").GetArrayLength());
        Assert.Equal(Fit.Law.Exponent.Value, json.RootElement.GetProperty("peukert").GetProperty("value").GetDouble(), 1e-5);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("peukert").GetProperty("standard_error").ValueKind);
        Assert.Equal("pass", json.RootElement.GetProperty("capacity_tests")[0].GetProperty("verdict").GetString());
    }

    [Fact]
    public void Markdown_Fragment_StandsInAFence()
    {
        var text = MarkdownReport.Write(BatteryFitReport.Describe("bench.csv", Fit, 0.8));

        Assert.Contains("```yaml\n  # Fitted to bench.csv, runs 1, 2, down to ", text, StringComparison.Ordinal);
        Assert.EndsWith(" V]\n```\n", text, StringComparison.Ordinal);
        Assert.Contains("| Peukert's exponent | 1.15", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.7996, false, "under 80.0")]
    [InlineData(0.7994, false, "79.9")]
    [InlineData(0.8, true, "80.0")]
    public void CapacityTest_JustMissed_DoesNotReadAsMet(double fraction, bool isPassed, string shown)
    {
        var test = Fit.Tests[0] with { Fraction = fraction, IsPassed = isPassed };

        var table = BatteryFitReport.Describe("bench.csv", Fit with { Tests = [test] }, 0.8).Blocks.OfType<ReportTable>().Single(block => block.Title.StartsWith("Capacity test", StringComparison.Ordinal));

        Assert.Equal(shown, table.Rows[0][3].Text);
    }

    [Fact]
    public void Plot_EachRun_HasAMeasuredAndAFittedCurve()
    {
        var panel = Assert.Single(DischargeFitPlot.Describe("bench.csv", Fit).Panels);

        Assert.Equal(["run 1, 2.03 A", "run 1, fitted", "run 2, 5.19 A", "run 2, fitted"], panel.Series.Select(line => line.Name));
        Assert.Equal("minutes since the start of the discharge", panel.X.Label);
        Assert.All(panel.Series, line => Assert.InRange(line.Points.Length, 2, 400));
    }
}
