using Endurance.Components;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Yaml;
using Xunit;

namespace Endurance.Tests.Yaml;

/// <summary>The shipped twin_feeds.yaml and changes of the starter scenario, key by key.</summary>
public class SupplyBindingTests
{
    private static readonly Scenario Twin = ShippedScenarioTests.Read("twin_feeds.yaml");

    [Fact]
    public void Alternator_OfTheTwinFeeds_HoldsWhatWasTyped()
    {
        var alternator = Twin.Alternators[0];

        Assert.Equal(14, alternator.LimitIdle!.Value.Amperes, 12);
        Assert.Equal(16, alternator.TripsAbove!.Value.Volts, 12);
        Assert.Equal(new AlternatorField { Bus = "main_bus", Current = Current.FromAmperes(2.5), IsOn = true }, alternator.Field);
    }

    [Fact]
    public void Master_OfTheTwinFeeds_HoldsItsContactorShuntAndReturn()
    {
        var master = Twin.Feeds[0];

        Assert.Equal(3, master.Contactor!.PullInCurrent!.Value.Amperes, 12);
        Assert.Equal(8, master.Contactor.PullsInAbove!.Value.Volts, 12);
        Assert.Equal(3.5, master.Contactor.DropsOutBelow!.Value.Volts, 12);
        Assert.False(master.Contactor.IsNormallyClosed);
        Assert.Equal(0.5, master.Shunt.Milliohms, 12);
        Assert.Equal("firewall_block", master.Return!.To);
        Assert.Equal(master.Wire!.Resistance / 2, master.Return.Wire.Resistance);
    }

    [Fact]
    public void Protection_WithAndWithoutItsOwnFigures_IsGivenOrFromTheLibrary()
    {
        var typed = Twin.Feeds[1].Breaker!;
        var link = Twin.Feeds[2].FusibleLink!;
        var fuse = Twin.Feeds[3].Fuse!;

        Assert.Equal((1.25, 50.0, 5.0), (typed.Factor, typed.TimeConstant!.Value.Seconds, typed.Resistance.Milliohms));
        Assert.Equal((1.5, 20.0), (link.Factor, link.TimeConstant!.Value.Seconds));
        Assert.Equal((1.25, 2.0), (fuse.Factor, fuse.TimeConstant!.Value.Seconds));
        Assert.DoesNotContain(Twin.Assumptions, assumption => assumption.Part == "essential_normal" && assumption.Text.StartsWith("breaker", StringComparison.Ordinal));
        Assert.Equal(2, Twin.Assumptions.Count(assumption => assumption.Part == "ignition_normal" && assumption.Source == ProtectionDefaults.Source));
    }

    [Fact]
    public void Diode_OfALibraryClass_IsThatOfTheTableWithItsSource()
    {
        var known = DiodeTable.Find("schottky_15a")!;

        Assert.Equal(known.Diode with { Rated = known.Rated }, Twin.Feeds[1].Diode);
        Assert.Contains(Twin.Assumptions, assumption => assumption is { Part: "essential_normal", Origin: Origin.Library } && assumption.Source == known.Source);
    }

    [Fact]
    public void Charger_WithoutADroop_FallsByATenthOfAVoltUpToItsLimit()
    {
        var charger = Assert.Single(Twin.Chargers);

        Assert.Equal(50, charger.Droop.Milliohms, 9);
        Assert.Equal((13.0, 12.6), (charger.CutIn!.Value.Volts, charger.CutOut!.Value.Volts));
        Assert.Equal(0.9, charger.Efficiency, 12);
    }

    [Fact]
    public void Loads_OfTheTwinFeeds_HoldTheirBranchesAndFigures()
    {
        var display = Twin.Loads[0];
        var box = Twin.Loads[1];

        Assert.Equal(new Inrush(Current.FromAmperes(5), Duration.FromSeconds(20)), display.Inrush);
        Assert.Equal(LoadBasis.Measured, display.Basis);
        Assert.Equal(new DateOnly(2026, 5, 2), display.MeasuredOn);
        Assert.Equal("firewall_block", display.Return!.To);
        Assert.Equal(7.5, display.Breaker!.Rating.Amperes, 12);
        Assert.Equal(["essential_bus", "backup_bus"], box.Inputs.Select(input => input.Bus));
        Assert.Equal("essential_bus", box.Bus);
        Assert.Equal(["com_receive"], Twin.Loads[4].Needs.AsEnumerable());
        Assert.Equal("landing", Twin.Loads[^1].Phase);
    }

    [Fact]
    public void Steps_OfTheTwinFeeds_HoldWarningsSelectionsAndDurations()
    {
        var warned = Twin.FailureCases[0].Timeline[1];
        var taxi = Twin.FailureCases[2].Timeline;

        Assert.Equal(new WhenWarned("panel_light", Duration.FromMinutes(2)), warned.Trigger);
        Assert.Contains(new TimelineAction(ActionVerb.Select, "ignition_source", "backup"), warned.Actions);
        Assert.Contains(new TimelineAction(ActionVerb.Idle, "engine"), taxi[0].Actions);
        Assert.Equal(10, taxi[1].Lasts!.Value.Minutes, 12);
        Assert.Equal(["landing_light"], Twin.Landing!.Connect.AsEnumerable());
        Assert.Empty(Twin.FailureCases[0].Landing!.Connect);
        Assert.Null(Twin.FailureCases[1].Landing);
    }

    [Fact]
    public void Diode_OfTheSameNameAsAClass_IsTheScenariosOwn()
    {
        var text = (StarterScenario.Text + "\ndiodes:\n  schottky_3a: {kind: ideal_controller, on_resistance: 7 mohm}\n").Replace("diode: {kind: ideal_controller, on_resistance: 4 mohm, regulated_drop: 20 mV}", "diode: schottky_3a", StringComparison.Ordinal);

        var scenario = ScenarioReader.ReadText("own.yaml", text).Scenario!;

        Assert.Contains(scenario.Feeds, feed => feed.Diode is IdealDiodeController { OnResistance.Milliohms: > 6.9 and < 7.1 });
    }

    [Fact]
    public void ForwardPoints_MoreThanTwo_SayTheirLargestMisfit()
    {
        var text = StarterScenario.Text + "\ndiodes:\n  measured: {kind: schottky, forward: [[1 A, 0.35 V], [5 A, 0.43 V], [15 A, 0.52 V]], at: 25 degC}\n";

        var scenario = ScenarioReader.ReadText("points.yaml", text).Scenario!;

        var fitted = Assert.Single(scenario.Assumptions, assumption => assumption.Part == "measured" && assumption.Origin == Origin.Derived);
        Assert.Matches(@"; largest misfit \d+\.\d mV over 3 points$", fitted.Text);
    }

    [Fact]
    public void Fuse_ThatIsTooSmall_OpensInARun()
    {
        var text = File.ReadAllText(Path.Combine(Folders.Scenarios, "twin_feeds.yaml"))
            .Replace("fuse: {rated: 7.5 A, resistance: 8 mohm}", "fuse: {rated: 1 A, resistance: 8 mohm}", StringComparison.Ordinal);
        var scenario = ScenarioReader.ReadText("small.yaml", text).Scenario!;

        var run = new Simulator(scenario).Run(scenario.FailureCases[2], new SimulationOptions());

        Assert.Contains(run.Events, happened => happened.What.StartsWith("ignition_normal fuse opened", StringComparison.Ordinal));
        Assert.NotNull(run.Loads.Single(load => load.Name == "ignition").TimePowered);
    }

    [Fact]
    public void Converter_IsACharger()
    {
        var text = File.ReadAllText(Path.Combine(Folders.Scenarios, "twin_feeds.yaml")).Replace("\nchargers:", "\nconverters:", StringComparison.Ordinal);

        Assert.Equal(Twin.Chargers.AsEnumerable(), ScenarioReader.ReadText("converter.yaml", text).Scenario!.Chargers.AsEnumerable());
    }

    [Theory]
    [InlineData("contactor: {state: closed}", 1)]
    [InlineData("breaker: {rated: 10 A, state: open}", 0)]
    [InlineData("switch: open", 0)]
    public void Charger_WithAWayBack_FeedsItselfOnlyWhereThatIsClosed(string contact, int warnings)
    {
        var text = File.ReadAllText(Path.Combine(Folders.Broken, "charger_feeds_itself.yaml")).Replace("contactor: {state: closed}", contact, StringComparison.Ordinal);

        Assert.Equal(warnings, ScenarioReader.ReadText("circle.yaml", text).Diagnostics.Count(told => told.Code == "charger-feeds-itself"));
    }
}
