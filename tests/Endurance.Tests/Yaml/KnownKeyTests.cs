using Endurance.Yaml.Keys;
using Xunit;

namespace Endurance.Tests.Yaml;

public class KnownKeyTests
{
    private static readonly Section[] Sections =
    [
        ScenarioKeys.Scenario, ScenarioKeys.FailureCase, ScenarioKeys.Step, ScenarioKeys.When, ScenarioKeys.Requirement,
        BatteryKeys.Battery, BatteryKeys.DischargePoint, BatteryKeys.Kinetic, BatteryKeys.Polarisation, BatteryKeys.Protection, 
        PartKeys.Alternator, PartKeys.Bus, PartKeys.Field, LoadKeys.Load, LoadKeys.Breaker, LoadKeys.Input, LoadKeys.Inrush,
        SupplyKeys.Charger, SupplyKeys.Converter, SupplyKeys.Ground, SupplyKeys.Selector, SupplyKeys.Warning, SupplyKeys.Landing,
        FeedKeys.Diode, FeedKeys.Feed, FeedKeys.Wire, FeedKeys.Contactor, FeedKeys.Switch, FeedKeys.Breaker, FeedKeys.Fuse, FeedKeys.FusibleLink, FeedKeys.Resistor, FeedKeys.Return,
        StudyKeys.Tolerance, StudyKeys.Offer,
    ];

    [Fact]
    public void Example_OfEveryQuantity_IsInItsRange() =>
        Assert.All(Sections.SelectMany(section => section.Keys).Where(key => key.Range is not null), key => Assert.True(key.Range!.Contains(key.Range.Placeholder), key.Name));

    [Fact]
    public void Keys_OfEverySection_AreNamedOnce() =>
        Assert.All(Sections, section => Assert.Equal(section.Keys.Length, section.Keys.Select(key => key.Name).Distinct(StringComparer.Ordinal).Count()));
}
