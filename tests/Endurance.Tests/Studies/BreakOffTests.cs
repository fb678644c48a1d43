using System.Text.Json;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.GroundTest;
using Endurance.Studies.LoadAnalysis;
using Endurance.Studies.Sizing;
using Endurance.Studies.Spread;
using Endurance.Studies.Wiring;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

/// <summary>Cases that cannot be computed to their end, each for another cause, beside one that can.</summary>
public sealed class BreakOffTests
{
    private const string Restart = "Give the load a higher restart voltage or a start-up time, or move a threshold.";

    /// <summary>10 A through 100 mohm pull the display below a minimum from which it starts again at once, from 48 min on; see <see cref="ChatteringTests"/>.</summary>
    private static Scenario Flickering => Scenario(2) with
    {
        Buses = [Bus("bus", 9)],
        Batteries = [Battery("battery", "bus", 20, 20, 1, Table((0, 12), (100, 13)), Table((0, 100), (100, 100)))],
        Loads = [Amperes("display", "bus", 10, 11.6) with { Restart = Voltage.FromVolts(11.7), Wire = Endurance.Components.Wire.OfGauge(new WireGauge(14), Length.FromFeet(1e-4), 8.3e-3, Temperature.FromCelsius(20)) }],
        FailureCases = [Case(), Case(At(5, (ActionVerb.Shed, "display"))) with { Name = "shed" }],
        Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(90) }],
    };

    /// <summary>1 mAh of 1.8 V is a capacitor of 2 F: through 7 mohm it follows in 14 ms, for twelve hours.</summary>
    private static Scenario Stiff => Scenario(12) with
    {
        Buses = [Bus("bus", 9)],
        Batteries =
        [
            Battery("battery", "bus", 18, 20, 1, Table((0, 11), (100, 12.8)), Table((0, 6), (100, 6))),
            Battery("memory_battery", "bus", 0.001, 20, 1, Table((0, 11), (100, 12.8)), Table((0, 1), (100, 1))),
        ],
        Loads = [Amperes("display", "bus", 3, 10)],
        FailureCases = [Case(), Case(At(0, (ActionVerb.Fail, "memory_battery"))) with { Name = "without" }],
        Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(60) }],
    };

    [Fact]
    public void Case_TooStiff_FailsWithItsMinuteAndLeavesTheOtherAlone()
    {
        var cases = FailureCaseStudy.Run(Stiff, Stiff.FailureCases, new SimulationOptions());

        Assert.Equal([Verdict.Fail, Verdict.Pass], cases.Select(result => result.Verdict));
        Assert.Equal(BreakOffCause.TooStiff, cases[0].BreakOff!.Cause);
        Assert.StartsWith("after 300000 steps memory_battery still changes too fast to follow at minute ", cases[0].BreakOff!.Told(""), StringComparison.Ordinal);
        Assert.Equal("too-stiff", Assert.Single(cases[0].Findings).Code);
        Assert.Null(cases[1].BreakOff);
        var report = MarkdownReport.Write(FailureCaseReport.DescribeQuiet(Stiff, cases));
        Assert.Matches(@"\| case *\| not known *\| not known *\|.*not known *\| FAIL, too stiff", report);
    }

    /// <summary>No drawn network is known that is not solved, so the break-off is that of a run that has not begun.</summary>
    [Fact]
    public void Case_NotSolvedAtZero_FailsWithoutAnyNumberOfItsNetwork()
    {
        var scenario = Flickering;
        var network = NetworkCompiler.Compile(scenario);
        var run = new SimulationRun(scenario, network, scenario.FailureCases[0], new SimulationOptions());

        var result = Judgement.Of(scenario, scenario.FailureCases[0], run.BrokenOff(BreakOff.OfUnsolved(new UnsolvedNetworkException("bus", 0.25), 0)));

        Assert.Equal(Verdict.Fail, result.Verdict);
        Assert.Equal(
            "case plain: the network was not solved: 0.25 A do not balance at bus at minute 0.00. Look there for a value far out of proportion; without one it is a fault of this program.",
            result.BreakOff!.Told("case plain"));
        Assert.Equal("not-solved", result.Findings[0].Code);
        using var json = JsonDocument.Parse(FailureCaseJson.Write("bench", [result]));
        var told = json.RootElement.GetProperty("cases")[0];
        Assert.Equal("bus", told.GetProperty("chattering").GetProperty("parts")[0].GetString());
        Assert.Equal(0, told.GetProperty("endurance_minutes").GetDouble());
        Assert.All(new[] { "buses", "batteries", "feeds" }, key => Assert.Equal(0, told.GetProperty(key).GetArrayLength()));
        Assert.Contains("FAIL, not solved", MarkdownReport.Write(FailureCaseReport.Describe(scenario, [result])), StringComparison.Ordinal);
        Assert.DoesNotContain("start (V)", MarkdownReport.Write(FailureCaseReport.Describe(scenario, [result])), StringComparison.Ordinal);
    }

    [Fact]
    public void Wiring_OfACaseThatChatters_CountsItsCurrentsUpToThereAndSaysSo()
    {
        var result = WiringStudy.Run(Flickering, new WiringOptions());

        Assert.Equal(10, Assert.Single(result.Rows).Current.Steady.Amperes, 1e-6);
        Assert.Equal(["the aircraft as drawn", "case case"], result.LeftOut.Select(one => one.What));
        Assert.Equal($"case case: display switches itself on and off without end at minute 48.00. {Restart}", result.LeftOut[1].Told);
        Assert.Contains(result.LeftOut[1].Told, MarkdownReport.Write(WiringReport.Describe(Flickering, result)), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(WiringJson.Write(result));
        Assert.Equal(48, json.RootElement.GetProperty("chattering")[1].GetProperty("minutes").GetDouble(), 0.001);
    }

    [Fact]
    public void Wiring_OfACaseThatChattersAtOnce_TakesTheCurrentsAtZero()
    {
        var dead = Flickering with { FailureCases = [], Batteries = [Flickering.Batteries[0] with { InitialCharge = 0.3 }] };

        Assert.Equal(0, Assert.Single(WiringStudy.Run(dead, new WiringOptions()).LeftOut).BreakOff.Time.Minutes);
    }

    [Fact]
    public void GroundTest_OfACaseThatChatters_RunsAsFarAsItIsPredicted()
    {
        var plan = GroundTestStudy.Plan(Flickering);

        Assert.Equal("timed run of case case", Assert.Single(plan.LeftOut).What);
        Assert.Contains("Run case until 45 min: it is predicted no further.", plan.StopRule);
        Assert.Contains(plan.Points, point => point.Title == "case, 45 min");
        Assert.DoesNotContain(plan.Points, point => point.Title == "case, 50 min");
        Assert.Contains(plan.LeftOut[0].Told, MarkdownReport.Write(TestCardReport.Describe(plan)), StringComparison.Ordinal);
    }

    [Fact]
    public void GroundTest_OfALoadThatChattersAtOnce_LeavesOutItsPointsAlone()
    {
        var plan = GroundTestStudy.Plan(Flickering with { Batteries = [Flickering.Batteries[0] with { InitialCharge = 0.3 }] });

        Assert.Contains("the point on display", plan.LeftOut.Select(one => one.What));
        Assert.Single(plan.Points, point => point.Group == TestGroup.RestVoltage);
        Assert.Equal(Enumerable.Range(1, plan.Points.Length), plan.Points.Select(point => point.Number));
    }

    [Fact]
    public void Loads_OfACaseThatChatters_HaveNoSimulatedMinutes()
    {
        var result = LoadAnalysisStudy.Run(Flickering);

        Assert.Equal("case case", Assert.Single(result.LeftOut).What);
        Assert.Contains("not known", MarkdownReport.Write(LoadAnalysisReport.Describe(Flickering, result)), StringComparison.Ordinal);
    }

    [Fact]
    public void Spread_OfSamplesThatBreakOff_TellsTheFirstOfEachCause()
    {
        // A sample in which the display is required would be decided, and end, by its first flicker.
        var scenario = Flickering with
        {
            Loads = [.. Flickering.Loads, Amperes("radio", "bus", 1e-6, 9)],
            Requirements = [new Requirement { Loads = ["radio"], Endure = Duration.FromMinutes(90) }],
            Tolerances = [new Tolerance("battery.health", new Uniform(0.5, 1))],
        };
        var options = new SpreadOptions { Samples = 4 };
        var result = new SpreadResult
        {
            Scenario = scenario,
            Options = options,
            Cases = SpreadStudy.Run(scenario, options),
            AsWritten = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions()),
            Sensitivity = [],
        };

        Assert.Contains(
            "case: 4 of 4; the minutes of these samples end there, and they meet no requirement. In the first, display switches itself on and off without end at minute ",
            string.Join(' ', SpreadReport.Describe(result).Blocks.OfType<ReportList>().SelectMany(list => list.Items)),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Size_OfACaseThatBreaksOffWithNothingRequired_DoesNotPass()
    {
        var result = SizingStudy.Health(Flickering with { Requirements = [] }, "battery", new SimulationOptions());

        Assert.Null(result.Limit);
    }

    [Fact]
    public void Size_TellsHowFarItHasCome()
    {
        var told = new List<(int Done, int All)>();
        SizingStudy.Answer(
            Flickering, new SizingQuestion { Find = SizingFind.Capacity, Subject = "battery" }, new SimulationOptions(),
            (done, all) =>
            {
                lock (told)
                    told.Add((done, all));
            });

        Assert.InRange(told.Count, 26, 50);
        Assert.All(told, one => Assert.InRange(one.Done, 1, one.All));
        Assert.Single(told.Select(one => one.All).Distinct());
    }
}
