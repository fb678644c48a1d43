using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;
using Endurance.Tests.Yaml;
using Endurance.Yaml;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

/// <summary>Of every shipped scenario, the ground test has to prove every part by a reading that would differ if the part failed.</summary>
public sealed class GroundTestStudyTests
{
    public static TheoryData<string> Files => ShippedScenarioTests.Files;

    /// <summary>A bench supply of 25.2 V on a 14 V bus would burn what is on it.</summary>
    [Fact]
    public void Bus_BehindAConverterOfATwentyEightVoltSystem_IsTestedAtItsOwnVolts()
    {
        var plan = GroundTestStudy.Plan(Scenarios.Read("""
            endurance: 1
            system: 28 V
            buses: {main: {cutoff: 21 V}, avionics: {cutoff: 10.5 V}, far: {}}
            batteries:
              main_battery: {bus: main, chemistry: agm, capacity: 24 Ah, rate: 20 h}
              backup: {bus: avionics, chemistry: agm, cells: 6, capacity: 7 Ah, rate: 20 h}
            converters:
              converter: {from: main, to: avionics, output: 13.8 V, limit: 20 A, efficiency: 85 %}
            feeds:
              late: {from: far, to: avionics, diode: schottky_15a}
            loads:
              pump: {bus: main, current: 6 A, minimum: 20 V}
              radio: {bus: avionics, current: 5 A, minimum: 10.5 V, essential: true}
            low_voltage_warnings:
              low: {senses: avionics, below: 11.5 V, for: 5 s}
            failure_cases:
              discharge: {timeline: []}
            requirements:
              - {loads: essential, endure: 100 min}
            """));

        Assert.Contains(plan.Conditions, sentence => sentence.StartsWith("Volts within 0.4 V", StringComparison.Ordinal));
        Assert.Contains(plan.Conditions, sentence => sentence.StartsWith("On avionics, far: volts within 0.2 V", StringComparison.Ordinal));
        Assert.Contains(plan.StopRule, sentence => sentence.Contains("its own end: main_battery 22.0 V, backup 11.0 V", StringComparison.Ordinal));
        var readings = plan.Points.SelectMany(point => point.Readings).Where(reading => reading.Kind == ReadingKind.BusVolts && reading.Predicted > 1).ToList();
        Assert.All(readings, reading => Assert.Equal(reading.Part is "main" ? 0.4 : 0.2, reading.Tolerance, 1e-9));
        var supplied = plan.Points.SelectMany(point => point.Configuration).Where(sentence => sentence.Contains("ench supply", StringComparison.Ordinal)).ToList();
        Assert.Contains(supplied, sentence => sentence is "Bench supply, 12.6 V, on far.");
        Assert.Contains(supplied, sentence => sentence.EndsWith("on avionics, lowered slowly from 13.6 V.", StringComparison.Ordinal));
        Assert.DoesNotContain(supplied, sentence => sentence.Contains("25.2 V", StringComparison.Ordinal) || sentence.Contains("26.2 V", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Feed_OfAShippedScenario_CarriesCurrentAtAPoint(string file)
    {
        var (scenario, plan) = Read(file);

        Assert.All(scenario.Feeds, feed =>
        {
            var point = Single(plan, TestGroup.Conducts, feed.Name);
            Assert.True(Reading(point, ReadingKind.FeedAmperes, feed.Name).Predicted >= 0.1);
        });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Diode_OfAShippedScenario_HoldsVoltsBackAtAPoint(string file)
    {
        var (scenario, plan) = Read(file);

        Assert.All(scenario.Feeds.Where(feed => feed.Diode is not null), feed =>
        {
            var point = Single(plan, TestGroup.DiodeBlocks, feed.Name);
            Assert.True(Reading(point, ReadingKind.BusVolts, feed.To).Predicted > 10);
            Assert.InRange(Reading(point, ReadingKind.BusVolts, feed.From).Predicted, 0, 0.1);
        });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Contact_OfAShippedScenario_InterruptsAtAPoint(string file)
    {
        var (scenario, plan) = Read(file);

        Assert.All(scenario.Feeds.Where(HasContact), feed =>
        {
            var point = Single(plan, TestGroup.Opens, feed.Name);
            Assert.True(Reading(point, ReadingKind.BusVolts, feed.From).Predicted > 10);
            Assert.InRange(Reading(point, ReadingKind.BusVolts, feed.To).Predicted, 0, 0.1);
        });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Load_OfAShippedScenario_DrawsAtAPointOfItsOwn(string file)
    {
        var (scenario, plan) = Read(file);

        Assert.All(scenario.Loads, load => Assert.True(Reading(Single(plan, TestGroup.LoadAlone, load.Name), ReadingKind.LoadAmperes, load.Name).Predicted > 0));
        Assert.All(scenario.Loads.Where(load => !load.Inputs.IsEmpty), load =>
            Assert.Equal(load.Inputs.Length, plan.Points.Count(point => point.Group == TestGroup.Conducts && point.Parts.Contains(load.Name))));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Source_OfAShippedScenario_GivesAtAPoint(string file)
    {
        var (scenario, plan) = Read(file);

        Assert.All(scenario.Batteries, battery =>
        {
            Assert.True(Reading(Single(plan, TestGroup.RestVoltage, battery.Name), ReadingKind.BusVolts, battery.Bus).Predicted > 10);
            Assert.NotEmpty(Single(plan, TestGroup.SourceAlone, battery.Name).Readings);
        });
        Assert.All(scenario.Alternators, alternator => Assert.Equal(
            alternator.Setpoint.Volts,
            Reading(Single(plan, TestGroup.EngineRunning, alternator.Name), ReadingKind.BusVolts, alternator.Bus).Predicted,
            1.5));
        Assert.All(scenario.Chargers, charger => Assert.NotEmpty(Single(plan, TestGroup.EngineRunning, charger.Name).Readings));
        Assert.All(scenario.Warnings, warning => Assert.NotEmpty(Single(plan, TestGroup.Warning, warning.Name).Readings));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Points_OfAShippedScenario_AreNumberedFromOneAndFinite(string file)
    {
        var (_, plan) = Read(file);

        Assert.Equal(Enumerable.Range(1, plan.Points.Length), plan.Points.Select(point => point.Number));
        Assert.All(plan.Points.SelectMany(point => point.Readings), reading =>
        {
            Assert.True(double.IsFinite(reading.Predicted));
            Assert.True(reading.Tolerance > 0);
        });
        Assert.Contains(plan.Points, point => point.Group == TestGroup.EnduranceRun);
    }

    [Fact]
    public void TimedRun_OfTheFloatplane_EndsBeforeABatteryIsBelowAFifth()
    {
        var (_, plan) = Read("floatplane.yaml");

        var run = plan.Points.Where(point => point.Group == TestGroup.EnduranceRun).ToList();

        Assert.Equal("alternator_failure, 0 min", run[0].Title);
        Assert.Equal("alternator_failure, 5 min", run[1].Title);
        Assert.Equal("alternator_failure, 115 min", run[^1].Title);
        Assert.Equal("Run alternator_failure until 115 min: ship_battery is then predicted to be below 20 % charge.", plan.StopRule[0]);
    }

    /// <summary>The case asks for most, but a cell cannot be shorted to try it.</summary>
    [Fact]
    public void TimedRun_OfACaseWithAShortedCell_IsNotAskedFor()
    {
        var bench = Bench with
        {
            FailureCases = [Case() with { Name = "plain" }, Case(At(0, (ActionVerb.ShortCell, "main"))) with { Name = "cell" }],
            Requirements = [Endure(30), Endure(60) with { Case = "cell" }],
        };

        Assert.Equal("Run plain until 30 min: that is what is asked of the case.", GroundTestStudy.Plan(bench).StopRule[0]);
        Assert.StartsWith("Run engine stopped until 30 min", GroundTestStudy.Plan(bench with { FailureCases = [bench.FailureCases[1]], Requirements = [Endure(30)] }).StopRule[0], StringComparison.Ordinal);
    }

    /// <summary>Its bus is dead from the start, which ends nothing: the backup is what the run is about.</summary>
    [Fact]
    public void TimedRun_WithABatteryTakenOff_GoesOnWithTheOther()
    {
        var bench = Bench with { FailureCases = [Case(At(0, (ActionVerb.Fail, "main")))], Requirements = [Endure(30)] };

        var plan = GroundTestStudy.Plan(bench);

        Assert.Equal("Run case until 30 min: that is what is asked of the case.", plan.StopRule[0]);
        Assert.Equal(7, plan.Points.Count(point => point.Group == TestGroup.EnduranceRun));
    }

    /// <summary>12 V over six cells, over ten, and over an unknown number.</summary>
    [Theory]
    [InlineData(6, "About 2.0 V low: a shorted cell; a little low: ")]
    [InlineData(10, "About 1.2 V low: a shorted cell; a little low: ")]
    [InlineData(null, "rest. A little low: ")]
    public void Rest_OfABattery_SaysWhatAShortedCellTakesAway(int? cells, string said)
    {
        var plan = GroundTestStudy.Plan(Bench with { Batteries = [Bench.Batteries[0] with { Cells = cells }] });

        Assert.Contains(said, Single(plan, TestGroup.RestVoltage, "main").Remarks[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_OfAFailureCase_ArePredictedOneAfterTheOther()
    {
        var (_, plan) = Read("floatplane.yaml");

        var step = Assert.Single(plan.Points, point => point.Group == TestGroup.Transfer && string.Equals(point.Title, "alternator_failure, step 2", StringComparison.Ordinal));

        // Past the open master: the main bus has no line, the alternate feed has.
        Assert.DoesNotContain(step.Readings, reading => string.Equals(reading.Part, "main_bus", StringComparison.Ordinal));
        Assert.True(Reading(step, ReadingKind.FeedAmperes, "essential_alternate").Predicted > 5);
        Assert.Contains("Then open master.", step.Configuration);
    }

    /// <summary>Two batteries of 12 V on buses of their own; the load hangs on the backup.</summary>
    private static Scenario Bench => Scenario() with
    {
        Buses = [Bus("main_bus"), Bus("backup_bus", 10)],
        Batteries = [Twelve("main", "main_bus"), Twelve("backup", "backup_bus")],
        Loads = [Amperes("display", "backup_bus", 2, 9)],
        FailureCases = [Case()],
    };

    private static Battery Twelve(string name, string bus) => Battery(name, bus, 20, 20, 1, Table((0, 11), (100, 12)), PiecewiseLinear.Constant(10)) with { Cells = 6 };

    private static Requirement Endure(double minutes) => new() { Loads = ["display"], Endure = Duration.FromMinutes(minutes) };

    private static (Scenario Scenario, GroundTestPlan Plan) Read(string file)
    {
        var scenario = ShippedScenarioTests.Read(file);
        return (scenario, GroundTestStudy.Plan(scenario));
    }

    private static TestPoint Single(GroundTestPlan plan, TestGroup group, string part) =>
        Assert.Single(plan.Points, point => point.Group == group && point.Parts[0] == part);

    private static ExpectedReading Reading(TestPoint point, ReadingKind kind, string part) =>
        Assert.Single(point.Readings, reading => reading.Kind == kind && string.Equals(reading.Part, part, StringComparison.Ordinal));

    private static bool HasContact(Feed feed) => feed.Switch is not null || feed.Contactor is not null || feed.Breaker is not null || feed.Fuse is not null;
}
