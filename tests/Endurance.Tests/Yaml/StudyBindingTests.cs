using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.Adjustment;
using Endurance.Yaml;

namespace Endurance.Tests.Yaml;

/// <summary>What studies need beside the aircraft, as a file writes it.</summary>
public sealed class StudyBindingTests
{
    private const string Chemical = "chemistry: agm, capacity: 18 Ah, rate: 20 h, health: 80 %, temperature: 10 degC";

    [Fact]
    public void Tolerances_OfEveryShape_AreReadInSi()
    {
        var tolerances = Read(
            """
            tolerances:
              battery.health: {triangular: [75 %, 80 %, 90 %]}
              battery.temperature: {normal: [10 degC, 9 degF]}
              battery.capacity: {uniform: [17 Ah, 18 Ah]}
              loads.draw: {normal: [1, 0.05]}
              recognition.delay: {uniform: [0 s, 2 min]}
            """).Tolerances;

        Tolerance[] expected =
            [
                new("battery.health", new Triangular(0.75, 0.8, 0.9)),
                new("battery.temperature", new Normal(283.15, 5)),
                new("battery.capacity", new Uniform(17 * 3600, 18 * 3600)),
                new("loads.draw", new Normal(1, 0.05)),
                new("recognition.delay", new Uniform(0, 120)),
            ];
        Assert.Equal(expected, tolerances);
    }

    [Fact]
    public void Tolerances_OfOneGroup_AreReadWithItsName()
    {
        var tolerances = Read(
            """
            tolerances:
              battery.health: {uniform: [70 %, 90 %], group: age of the lot}
              battery.resistance_factor: {uniform: [1, 2], group: age of the lot}
              loads.draw: {normal: [1, 0.05]}
            """).Tolerances;

        Assert.Equal(["age of the lot", "age of the lot", null], tolerances.Select(tolerance => tolerance.Group));
    }

    [Fact]
    public void BatteriesOnOffer_AreReadInTheirOrder()
    {
        var offers = Read(
            """
            batteries_on_offer:
              - {name: Large, capacity: 20 Ah, rate: 20 h, mass: 6400 g}
              - {name: Small, capacity: 12 Ah, rate: 10 h, mass: 1 lb}
              - {name: Unknown, capacity: 9 Ah, rate: 1 h}
            """).BatteriesOnOffer;

        // A pound is 0.45359237 kg by definition (international yard and pound agreement, 1959).
        BatteryOnOffer[] expected =
            [
                new("Large", Charge.FromAmpereHours(20), Duration.FromHours(20), 6.4),
                new("Small", Charge.FromAmpereHours(12), Duration.FromHours(10), 0.45359237),
                new("Unknown", Charge.FromAmpereHours(9), Duration.FromHours(1), null),
            ];
        Assert.Equal(expected, offers);
    }

    [Fact]
    public void BatteriesOnOffer_Empty_AreNone() => Assert.Empty(Read("batteries_on_offer: []").BatteriesOnOffer);

    [Theory]
    [InlineData("health: 80 %", "health: 60 %", "battery.health", 0.6)]
    [InlineData("temperature: 10 degC", "temperature: -5 degC", "battery.temperature", 268.15)]
    public void Quantity_OfALibraryBattery_AdjustsAsTheFileWould(string from, string to, string path, double value)
    {
        var typed = BatteryText.Battery(Chemical.Replace(from, to, StringComparison.Ordinal));
        var scenario = BatteryText.Scenario(Chemical, "current: 1 A");

        var adjusted = AdjustableQuantities.Find(scenario, path)!.Set(scenario, value).Batteries[0];

        Assert.Equal(typed.EffectiveCapacity.AmpereHours, adjusted.EffectiveCapacity.AmpereHours, 1e-12);
        Assert.Equal(typed.ResistanceFactor, adjusted.ResistanceFactor, 1e-12);
        Assert.Equal(typed.Resistance.At(0.5), adjusted.Resistance.At(0.5), 1e-15);
        Assert.Equal(typed.Temperature.Kelvin, adjusted.Temperature.Kelvin, 1e-9);
    }

    [Fact]
    public void Health_OfAMeasuredResistance_LeavesItAlone()
    {
        var scenario = BatteryText.Scenario($"capacity: 18 Ah, rate: 20 h, peukert: 1.2, {BatteryText.Plain}", "current: 1 A");

        var adjusted = AdjustableQuantities.Find(scenario, "battery.health")!.Set(scenario, 0.5).Batteries[0];

        Assert.Equal(0.001, adjusted.Resistance.At(0.5), 1e-15);
        Assert.Equal(9, adjusted.EffectiveCapacity.AmpereHours, 1e-12);
    }

    [Fact]
    public void Temperature_WithoutAnythingThatFollowsIt_IsNoQuantity()
    {
        var scenario = BatteryText.Scenario($"capacity: 18 Ah, rate: 20 h, peukert: 1.2, {BatteryText.Plain}", "current: 1 A");

        Assert.Null(AdjustableQuantities.Find(scenario, "battery.temperature"));
    }

    [Fact]
    public void ResistanceFactor_OfALibraryBattery_ReplacesWhatTemperatureAndHealthImply()
    {
        var typed = BatteryText.Battery(Chemical + ", resistance_factor: 2");
        var scenario = BatteryText.Scenario(Chemical, "current: 1 A");
        var factor = AdjustableQuantities.Find(scenario, "battery.resistance_factor")!;

        var adjusted = factor.Set(scenario, 2).Batteries[0];

        Assert.Equal(typed.Resistance.At(0.5) * 2, adjusted.Resistance.At(0.5) * adjusted.ResistanceFactor, 1e-15);
        Assert.Equal(scenario.Batteries[0].ResistanceFactor / 0.8, factor.Get(scenario), 1e-12);
    }

    /// <summary>An assumption of size or age must not come back when a battery is read off at another one.</summary>
    [Fact]
    public void Capacity_OfAnAgedLibraryBattery_ScalesItsResistanceWhenNewToo()
    {
        var scenario = BatteryText.Scenario(Chemical, "current: 1 A");

        var adjusted = AdjustableQuantities.Find(scenario, "battery.capacity")!.Set(scenario, 36 * 3600).Batteries[0];

        Assert.Equal(scenario.Batteries[0].NewAndWarm.Resistance.At(0.5) / 2, adjusted.NewAndWarm.Resistance.At(0.5), 1e-15);
    }

    [Fact]
    public void Quantity_OfEveryShippedScenario_SetToItsOwnValueKeepsIt()
    {
        foreach (var file in Directory.GetFiles(Folders.Scenarios, "*.yaml").Order(StringComparer.Ordinal))
        {
            var scenario = ScenarioReader.ReadFile(file).Scenario!;
            foreach (var quantity in AdjustableQuantities.Of(scenario))
            {
                var value = quantity.Get(scenario);

                Assert.InRange(value, quantity.Lowest, quantity.Highest);
                Assert.Equal(value, quantity.Get(quantity.Set(scenario, value)), Math.Abs(value) * 1e-12);
            }
        }
    }

    private static Scenario Read(string keys)
    {
        var read = ScenarioReader.ReadText("text.yaml",
            $$"""
            endurance: 1
            system: 14 V
            batteries:
              battery: {bus: bus, {{Chemical}}}
            buses:
              bus: {}
            loads:
              load: {bus: bus, current: 1 A, essential: true}
            failure_cases:
              case: {timeline: []}
            {{keys}}
            """);
        return read.Scenario ?? throw new InvalidOperationException(DiagnosticRenderer.Render(read.Diagnostics));
    }
}
