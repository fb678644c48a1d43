using System.Collections.Immutable;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reports;

public sealed class ReconciliationReportTests
{
    private static readonly DateOnly Day = new(2026, 5, 2);

    /// <summary>12 V behind 100 mohm; the display draws a fifth more than typed, the lamp was not measured, one reading is as typed.</summary>
    private static ReconciliationResult Result()
    {
        var scenario = Scenario(horizonHours: 4) with
        {
            Title = "Bench",
            Buses = [Bus("bus", 10)],
            Batteries = [Battery("battery", "bus", 10, 10, 1, Table((0, 10), (100, 12)), PiecewiseLinear.Constant(100))],
            Loads = [Amperes("display", "bus", 3, 9) with { IsEssential = true }, Watts("radio", "bus", 6), Amperes("old lamp", "bus", 0.4)],
            FailureCases = [Case()],
            Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(60) }],
        };
        var plan = GroundTestStudy.Plan(scenario);
        return ReconciliationStudy.Run(scenario, plan, [.. Measured(plan)]);
    }

    private static IEnumerable<MeasuredReading> Measured(GroundTestPlan plan)
    {
        var radio = plan.Points.Single(point => point.Title == "radio alone");
        yield return new MeasuredReading(plan.Points[0].Number, ReadingKind.BusVolts, "bus", 12.05, Day);
        yield return new MeasuredReading(plan.Points.Single(point => point.Title == "display alone").Number, ReadingKind.LoadAmperes, "display", 3.6, Day);
        foreach (var reading in radio.Readings)
            yield return new MeasuredReading(radio.Number, reading.Kind, reading.Part, Math.Round(reading.Predicted, 2), Day);
    }

    [Fact]
    public void Report_OfASmallCard_IsTheAgreedMarkdown() => GoldenText.AssertMatches("reconcile.md", MarkdownReport.Write(ReconciliationReport.Describe(Result())));

    [Fact]
    public void Json_OfASmallCard_IsTheAgreedText() => GoldenText.AssertMatches("reconcile.json", ReconciliationJson.Write(Result()));

    [Fact]
    public void Csv_OfASmallCard_IsTheAgreedText() => GoldenText.AssertMatches("reconcile.csv", ReconciliationCsv.Write(Result()).ReplaceLineEndings("\n"));

    [Fact]
    public void Overlay_OfASmallCard_IsTheAgreedText() => GoldenText.AssertMatches("measured.yaml", MeasuredOverlay.Write("bench.yaml", "testcard.csv", Result()));

    [Fact]
    public void Forms_WhateverTheCulture_AreTheSame() => Assert.Equal(Forms(), CommaCulture.Run(Forms));

    [Fact]
    public void Overlay_OfAwkwardNames_QuotesThem()
    {
        var result = Result();
        ImmutableArray<MeasuredLoad> loads = [.. new[] { "null", "- lamp", "Lämpchen", "old lamp", "2nd" }.Select(name => result.Loads[0] with { Drawn = result.Loads[0].Drawn with { Name = name } })];

        var lines = MeasuredOverlay.Write("bench.yaml", "testcard.csv", result with { Loads = loads }).Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal));

        Assert.Equal(["'null'", "'- lamp'", "'Lämpchen'", "'old lamp'", "'2nd'"], lines.Select(line => line.Trim().Split(':')[0]));
    }

    private static string Forms()
    {
        var result = Result();
        return MarkdownReport.Write(ReconciliationReport.Describe(result)) + ReconciliationJson.Write(result) + ReconciliationCsv.Write(result) + MeasuredOverlay.Write("bench.yaml", "testcard.csv", result);
    }
}
