using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml;
using Xunit;

namespace Endurance.Tests.Yaml;

public class ScenarioBindingTests
{
    private static readonly Scenario Starter = ScenarioReader.ReadText("starter.yaml", StarterScenario.Text).Scenario!;

    [Fact]
    public void Starter_Battery_HoldsWhatWasTyped()
    {
        var battery = Starter.Batteries[0];

        Assert.Equal("main_battery", battery.Name);
        Assert.Equal(16, battery.RatedCapacity.AmpereHours, 12);
        Assert.Equal(20, battery.Rate.Hours, 12);
        Assert.Equal(1.15, battery.PeukertExponent);
        Assert.Equal((double[])[0, 0.1, 0.5, 1], battery.Emf.X.AsEnumerable());
        Assert.Equal((double[])[10.9, 11.8, 12.3, 12.85], battery.Emf.Y.AsEnumerable());
        Assert.Equal(0.01, battery.Resistance.At(0.3), 12);
        Assert.Equal(0.95, battery.InitialCharge, 12);
        Assert.Equal(15, battery.Temperature.Celsius, 9);
    }

    [Fact]
    public void Group_InATimeline_IsSpeltOutInFileOrder()
    {
        var step = Starter.FailureCases[1].Timeline[1];

        Assert.Equal(new AtTime(Duration.FromMinutes(2)), step.Trigger);
        Assert.Equal(["radio_talk", "transponder", "pitot_heat", "strobes"], step.Actions.Select(action => action.Target));
        Assert.All(step.Actions, action => Assert.Equal(ActionVerb.Shed, action.Verb));
    }

    [Fact]
    public void Step_WithSeveralVerbs_KeepsTheOrderOfTheFile()
    {
        var step = Starter.FailureCases[0].Timeline[1];

        Assert.Equal(new WhenBelow("main_bus", Voltage.FromVolts(12.5), Duration.FromSeconds(60)), step.Trigger);
        Assert.Equal([ActionVerb.Shed, ActionVerb.Close, ActionVerb.Open], step.Actions.Select(action => action.Verb).Distinct());
    }

    [Fact]
    public void Requirement_OfEssentialLoads_NamesThem()
    {
        Assert.Equal(Starter.EssentialLoads.AsEnumerable(), Starter.Requirements[0].Loads.AsEnumerable());
        Assert.Equal("essential", Starter.Requirements[0].LoadsLabel);
        Assert.Null(Starter.Requirements[0].Case);
        Assert.Equal("essential_bus", Starter.Requirements[1].Bus);
        Assert.Empty(Starter.Requirements[1].Loads);
    }

    [Fact]
    public void Defaults_ThatWereUsed_AreAssumptions()
    {
        Assert.Contains(Starter.Assumptions, assumption => assumption.Part == "backup_battery" && assumption.Text == "charge at time zero 100 %");
        Assert.DoesNotContain(Starter.Assumptions, assumption => assumption.Part == "main_battery" && assumption.Text.StartsWith("charge at", StringComparison.Ordinal));
        Assert.DoesNotContain(Starter.Assumptions, assumption => assumption.Part == "scenario");
        Assert.Contains(Starter.Assumptions, assumption => assumption is { Part: "master", Origin: Origin.Library } && assumption.Source!.Contains("11-9", StringComparison.Ordinal));
    }

    [Fact]
    public void Feed_WithNothingInIt_GetsTheLeastResistanceAsAnAssumption()
    {
        var text = StarterScenario.Text.Replace("    wire: {gauge: 14 AWG, length: 3 ft}\n", "", StringComparison.Ordinal);

        var scenario = ScenarioReader.ReadText("starter.yaml", text).Scenario!;

        Assert.Contains(scenario.Assumptions, assumption => assumption.Part == "backup_feed" && assumption.Text.StartsWith("0.1 mohm", StringComparison.Ordinal));
        Assert.Equal(0.004, Assert.IsType<IdealDiodeController>(scenario.Feeds[3].Diode).OnResistance.Ohms, 12);
    }
}
