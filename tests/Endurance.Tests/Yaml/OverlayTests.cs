using Endurance.Components;
using Endurance.Yaml;

namespace Endurance.Tests.Yaml;

/// <summary>Files of changes laid over a scenario.</summary>
public sealed class OverlayTests
{
    private const string Drawn =
        """
        endurance: 1
        title: Bench
        system: 14 V
        alternators:
          alternator: {bus: main_bus, setpoint: 14.2 V, rated: 40 A}
        buses: {main_bus: {}}
        loads:
          display: {bus: main_bus, power: 28 W, minimum: 10.0 V, essential: true, basis: manual}
          radio: {bus: main_bus, current: 0.6 A}
        failure_cases:
          trouble: {timeline: []}
        layouts:
          bright: {loads: {display: {power: 40 W}, radio: {duty: 50 %}}}

        """;

    private const string Measured = "loads:\n  display: {power: 31.2 W, basis: measured, measured_on: 2026-05-02}\n";

    [Fact]
    public void Overlay_NamingKeys_ReplacesThemAndKeepsTheRest()
    {
        var read = Read(Drawn, null, ("measured.yaml", Measured));

        Assert.Empty(read.Diagnostics);
        var display = read.Scenario!.Loads[0];
        Assert.Equal(31.2, Assert.IsType<ConstantPower>(display.Demand).Power.Watts);
        Assert.Equal((LoadBasis.Measured, new DateOnly(2026, 5, 2)), (display.Basis, display.MeasuredOn));
        Assert.Equal(10, display.Minimum!.Value.Volts);
        Assert.Equal("Bench, with measured.yaml", read.Scenario.Title);
    }

    [Fact]
    public void Overlays_OfOneKey_CountFromTheLast()
    {
        var read = Read(Drawn, null, ("a/first.yaml", Measured), ("second.yaml", "loads: {display: {power: 33 W}}"));

        Assert.Equal(33, ((ConstantPower)read.Scenario!.Loads[0].Demand).Power.Watts);
        Assert.Equal("Bench, with first.yaml, with second.yaml", read.Scenario.Title);
    }

    [Fact]
    public void Overlay_WithALayout_LiesOnTop()
    {
        var read = Read(Drawn, "bright", ("measured.yaml", Measured));

        Assert.Equal(31.2, ((ConstantPower)read.Scenario!.Loads[0].Demand).Power.Watts);
        Assert.Equal(0.5, read.Scenario.Loads[1].Duty);
        Assert.Equal("Bench, layout bright, with measured.yaml", read.Scenario.Title);
    }

    [Fact]
    public void Faults_OfScenarioAndOverlays_AreToldAtTheirOwnPlaces()
    {
        var read = Read(
            Drawn.Replace("current: 0.6 A", "current: 0.6 V", StringComparison.Ordinal),
            null,
            ("first.yaml", "# measured\nloads:\n  display: {power: 31,2 W}\n  dispaly: {basis: measured}\n  autopilot: null\n"),
            ("second.yaml", "endurance: 1\nlayouts: {}\n"));

        Assert.Null(read.Scenario);
        Assert.Equal(
            [
                ("bench.yaml", 9, "wrong-unit"), ("first.yaml", 3, "decimal-comma"), ("first.yaml", 4, "missing-key"), ("first.yaml", 4, "missing-key"),
                ("first.yaml", 5, "nothing-to-remove"), ("second.yaml", 1, "unknown-key"), ("second.yaml", 2, "unknown-key"),
            ],
            read.Diagnostics.Select(told => (told.File, told.Line, told.Code)));
        Assert.Equal("  dispaly: {basis: measured}", read.Diagnostics[2].SourceLine);
        Assert.Equal("an overlay has no key `layouts`", read.Diagnostics[^1].Message);
    }

    [Theory]
    [InlineData("", "empty-file", 0)]
    [InlineData("loads:\n\tdisplay: {}\n", "tab-indentation", 2)]
    [InlineData("loads: {display: [", "yaml-syntax", 1)]
    [InlineData("- loads\n", "wrong-shape", 1)]
    public void Overlay_ThatIsNone_IsToldInItsFile(string text, string code, int line)
    {
        var told = Assert.Single(Read(Drawn, null, ("measured.yaml", text)).Diagnostics);

        Assert.Equal(("measured.yaml", line, code), (told.File, told.Line, told.Code));
    }

    [Fact]
    public void Files_ThatAreNotThere_AreAllTold()
    {
        var read = ScenarioReader.ReadFile("no.yaml", overlays: ["neither.yaml"]);

        Assert.Equal([("no.yaml", "file-not-found"), ("neither.yaml", "file-not-found")], read.Diagnostics.Select(told => (told.File, told.Code)));
    }

    private static ScenarioReadResult Read(string text, string? layout, params (string Name, string Text)[] overlays) =>
        ScenarioReader.ReadText("bench.yaml", text, layout, [.. overlays.Select(overlay => new OverlayText(overlay.Name, overlay.Text))]);
}
