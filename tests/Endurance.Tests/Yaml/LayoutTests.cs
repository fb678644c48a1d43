using Endurance.Components;
using Endurance.Findings;
using Endurance.Yaml;

namespace Endurance.Tests.Yaml;

/// <summary>Layouts laid over the scenario they stand in.</summary>
public sealed class LayoutTests
{
    private const string Drawn =
        """
        endurance: 1
        title: Bench
        system: 14 V
        alternators:
          alternator: {bus: main_bus, setpoint: 14.2 V, rated: 40 A}
        buses:
          main_bus: {}
          essential_bus: {cutoff: 11.0 V}
        feeds:
          tie: {from: main_bus, to: essential_bus, diode: bridge_leg, wire: {gauge: 12 AWG, length: 4 ft}}
          spare: {from: main_bus, to: essential_bus, switch: open}
        loads:
          display: {bus: essential_bus, power: 28 W, minimum: 10.0 V, essential: true}
        failure_cases:
          trouble: {timeline: []}

        """;

    [Fact]
    public void Layout_NamingAKey_ReplacesItAndKeepsTheRest()
    {
        var tie = Read("layouts: {a: {feeds: {tie: {diode: schottky_15a}}}}", "a").Scenario!.Feeds[0];

        Assert.Equal("schottky_15a", tie.DiodeName);
        Assert.Equal("essential_bus", tie.To);
        Assert.NotNull(tie.Wire);
    }

    [Fact]
    public void Layout_NamingAValueOfSeveralKeys_ReplacesItWhole()
    {
        var wire = Read("layouts: {a: {feeds: {tie: {wire: {resistance: 3 mohm}}}}}", "a").Scenario!.Feeds[0].Wire!;

        Assert.Equal(3, wire.Resistance.Milliohms, 1e-12);
        Assert.Null(wire.Gauge);
    }

    [Fact]
    public void Layout_NamingNothing_RemovesPartsAndKeys()
    {
        var scenario = Read("layouts: {a: {feeds: {spare: null, tie: {diode: ~}}}}", "a").Scenario!;

        Assert.Null(Assert.Single(scenario.Feeds).Diode);
    }

    [Fact]
    public void Layout_NamingNewParts_AddsThemAfterTheOthers()
    {
        var scenario = Read("layouts: {a: {loads: {lamp: {bus: main_bus, current: 2 A}}}}", "a").Scenario!;

        Assert.Equal(["display", "lamp"], scenario.Loads.Select(load => load.Name));
    }

    [Fact]
    public void Layout_IsToldByItsTitle()
    {
        Assert.Equal("Bench, layout a", Read("layouts: {a: {}}", "a").Scenario!.Title);
        Assert.Equal("Other", Read("layouts: {a: {title: Other}}", "a").Scenario!.Title);
    }

    [Fact]
    public void Layouts_OfAFile_AreNamedInItsOrderAndLeaveTheScenarioAsDrawn()
    {
        var read = Read("layouts: {b: {feeds: {tie: null}}, a: {feeds: {tie: null}}}");

        Assert.Equal("b, a", string.Join(", ", read.Layouts));
        Assert.Equal(2, read.Scenario!.Feeds.Length);
        Assert.IsType<JunctionDiode>(read.Scenario.Feeds[0].Diode);
    }

    /// <summary>Line and column are those of the layout's own text.</summary>
    [Theory]
    [InlineData("layouts: {a: {feeds: {tie: {diode: bridge_legg}}}}", "unknown-name", 16, 36, "bridge_leg")]
    [InlineData("layouts: {a: {feeds: {tie: {to: null}}}}", "missing-key", 16, 23, null)]
    [InlineData("layouts: {a: {feeds: {tye: null}}}", "nothing-to-remove", 16, 23, "tie")]
    [InlineData("layouts: {a: {feds: {tie: {diode: null}}}}", "unknown-key", 16, 15, "feeds")]
    [InlineData("layouts: {a: {layouts: {}}}", "unknown-key", 16, 15, null)]
    [InlineData("layouts: {a: {buses: {main_bus: null}}}", "unknown-name", 5, 21, null)]
    public void Layout_WithAFault_IsToldAtItsPlaceAndByItsName(string layouts, string code, int line, int column, string? nearest)
    {
        Assert.Empty(Read(layouts).Diagnostics);
        var told = Read(layouts, "a").Diagnostics[0];

        Assert.Equal((code, line, column, nearest, "a"), (told.Code, told.Line, told.Column, told.Nearest, told.Layout));
        Assert.Contains($"error[{code}]: in the layout `a`: ", DiagnosticRenderer.Render(told), StringComparison.Ordinal);
    }

    [Fact]
    public void Fault_OfTheScenarioAsDrawn_IsNotBlamedOnTheLayout()
    {
        var read = ScenarioReader.ReadText("text.yaml", Drawn.Replace("power: 28 W", "power: 28", StringComparison.Ordinal) + "layouts: {a: {}}", "a");

        Assert.Null(Assert.Single(read.Diagnostics).Layout);
    }

    [Fact]
    public void Layout_OfAnotherName_IsAnErrorWithTheNearest()
    {
        var told = Assert.Single(Read("layouts: {relay: {}, bridge: {}}", "brige").Diagnostics);

        Assert.Equal(("unknown-layout", Severity.Error, "bridge", null), (told.Code, told.Severity, told.Nearest, told.Layout));
    }

    private static ScenarioReadResult Read(string layouts, string? layout = null) => ScenarioReader.ReadText("text.yaml", Drawn + layouts, layout);
}
