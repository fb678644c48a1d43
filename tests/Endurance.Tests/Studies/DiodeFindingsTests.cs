using Endurance.Components;
using Endurance.Findings;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class DiodeFindingsTests
{
    [Theory]
    [InlineData(8, true)]
    [InlineData(15, false)]
    public void Diode_AboveItsRating_IsOverloaded(double rated, bool found)
    {
        var result = Steered(Schottky(20, 1.05, 6) with { Rated = Current.FromAmperes(rated) }).Judge();

        FindingAssert.Is(result, new Finding("diode-over-current", Severity.Warning, "steering", "10 A",
            "The diode of steering carries up to 10 A and is rated 8 A. Use a larger diode."), found);
    }

    [Fact]
    public void Diode_OfALibraryClass_BringsItsRating()
    {
        var result = Scenarios.Read("""
            endurance: 1
            system: 14 V
            batteries:
              ship: {bus: bus, capacity: 18 Ah, rate: 20 h, peukert: 1.15, resistance: 9 mohm, emf: [[0 %, 11 V], [100 %, 12.8 V]], health: 80 %}
            buses: {bus: {}, far: {}}
            feeds: {steering: {from: bus, to: far, diode: schottky_3a}}
            loads: {radio: {bus: far, current: 4 A}}
            failure_cases: {discharge: {timeline: []}}
            """).JudgeFirst();

        FindingAssert.Is(result, new Finding("diode-over-current", Severity.Warning, "steering", "4 A",
            "The diode of steering carries up to 4 A and is rated 3 A. Use a larger diode."));
    }

    /// <summary>4 A at 0.2 V or more are 0.8 W or more, 120 K at 150 K/W; the class allows 125 degC.</summary>
    [Theory]
    [InlineData("{kind: schottky_3a, heat_path: 150 K/W}", true)]
    [InlineData("{kind: schottky_3a, heat_path: 20 K/W}", false)]
    [InlineData("{kind: schottky_3a, heat_path: 150 K/W, max_junction: 300 degC}", false)]
    public void Diode_OfALibraryClassWithAHeatPath_IsHeldToTheLimitOfItsClass(string diode, bool found)
    {
        var result = Scenarios.Read($$$"""
            endurance: 1
            system: 14 V
            batteries:
              ship: {bus: bus, capacity: 18 Ah, rate: 20 h, peukert: 1.15, resistance: 9 mohm, emf: [[0 %, 11 V], [100 %, 12.8 V]], health: 80 %}
            buses: {bus: {}, far: {}}
            feeds: {steering: {from: bus, to: far, diode: {{{diode}}}}}
            loads: {radio: {bus: far, current: 4 A}}
            failure_cases: {discharge: {timeline: []}}
            """).JudgeFirst();

        Assert.Equal(found, result.Findings.Any(finding => finding is { Code: "junction-too-hot", Part: "steering" }));
        Assert.True(result.Run.Feed("steering").HighestJunction!.Value.Celsius > 30);
    }

    [Fact]
    public void Junction_BeyondItsLimit_IsSaidWhole()
    {
        var diode = Schottky(20, 1.05, 6) with { HeatPath = 12, MaximumJunction = Temperature.FromCelsius(50) };
        var result = Steered(diode).Judge();
        var reached = FormattableString.Invariant($"{result.Run.Feed("steering").HighestJunction!.Value.Celsius:F0} degC");

        FindingAssert.Is(result, new Finding("junction-too-hot", Severity.Warning, "steering", reached,
            $"The diode of steering reaches {reached}; its limit is 50 degC. Use a larger diode or a better heat path."));
    }

    [Fact]
    public void Diode_FailedShort_LetsCurrentBack()
    {
        // 12.5 V to 12 V through 10 + 10 + 5 + 1 mohm of path: 19 A for 6 min.
        var scenario = Scenario(0.1) with
        {
            Buses = [Bus("one"), Bus("two")],
            Batteries = [Ramp.Steady(12, "low", "one"), Ramp.Steady(12.5, "high", "two")],
            Feeds = [Feed("steering", "one", "two", 5, Schottky(20, 1.05, 6))],
        };

        FindingAssert.None(scenario.Judge(), "diode-backwards");
        FindingAssert.Is(scenario.Judge(Case(At(0, (ActionVerb.Short, "steering")))), new Finding("diode-backwards", Severity.Caution, "steering", "1.92 Ah",
            "1.92 Ah flow backwards through the diode of steering, from two to one: it has failed short or leaks, and what stands behind it is drained. Decide how you would notice, and what opens the feed."));
    }

    [Theory]
    [InlineData(1000, true)]
    [InlineData(20, false)]
    public void Leakage_OfAParkedAircraft_IsSaidForAMonth(double microamperes, bool found)
    {
        // At 27 degC; 720 h.
        var scenario = Scenario(0.1) with
        {
            Ambient = Temperature.FromKelvin(300.15),
            Buses = [Bus("main"), Bus("backup")],
            Batteries = [Battery("battery", "backup", 5, 20, 1.2, Table((0, 11), (100, 12.8)), PiecewiseLinear.Constant(20))],
            Feeds = [Feed("charge", "main", "backup", 5, Schottky(microamperes, 1.05, 6))],
        };

        FindingAssert.Is(scenario.Judge(), new Finding("diode-leakage", Severity.Caution, "charge", "0.72 Ah",
            "Parked for 30 days, battery loses 0.72 Ah back through the diode of charge. Use a diode that leaks less, or open the feed when parked."), found);
    }

    private static Scenario Steered(JunctionDiode diode) => Ramp.Standing(12, Amperes("load", "far", 10, 5)) with
    {
        Buses = [Bus("bus"), Bus("far")],
        Feeds = [Feed("steering", "bus", "far", 2, diode)],
    };
}
