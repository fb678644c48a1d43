using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The top-level keys, and those of failure cases and requirements.</summary>
internal static class ScenarioKeys
{
    private const string LandingForm = "{connect: [landing_light], lasts: 10 min}";

    public static readonly Section Scenario = new("the scenario",
    [
        Required("endurance", "1") with { Shape = Shapes.Word("1") },
        Text("title", "a line of text"),
        Required("system", "14 V or 28 V") with { Shape = new Patterned("^(14|28) *V$") },
        Quantity("ambient", Limits.Celsius(-80, 100, "10 degC")),
        Quantity("horizon", Limits.TimeAboveZero("4 h")),
        Of("batteries", "batteries by name", Shapes.Parts(() => BatteryKeys.Battery)),
        Of("alternators", "alternators by name", Shapes.Parts(() => PartKeys.Alternator)),
        Required("buses", "buses by name, such as main_bus: {}") with { Shape = Shapes.Parts(() => PartKeys.Bus) },
        Of("diodes", "diodes by name", Shapes.Parts(() => FeedKeys.Diode)),
        Of("feeds", "feeds by name", Shapes.Parts(() => FeedKeys.Feed)),
        Of("loads", "loads by name", Shapes.Parts(() => LoadKeys.Load)),
        Of("failure_cases", "failure cases by name", Shapes.Parts(() => FailureCase!)),
        Of("requirements", "a list of requirements", Shapes.OrNothing(Shapes.ListOfKeys(() => Requirement!, least: 0))),
        Of("chargers", "chargers by name", Shapes.Parts(() => SupplyKeys.Charger)),
        Of("converters", "converters by name", Shapes.Parts(() => SupplyKeys.Converter)),
        Of("grounds", "grounds by name", Shapes.Parts(() => SupplyKeys.Ground)),
        Of("selectors", "selectors by name", Shapes.Parts(() => SupplyKeys.Selector)),
        Of("low_voltage_warnings", "low-voltage warnings by name", Shapes.Parts(() => SupplyKeys.Warning)),
        Of("landing", LandingForm, Shapes.Keys(() => SupplyKeys.Landing)),
        Of("layouts", "layouts by name, such as bridge: {feeds: {essential_normal: {diode: bridge_leg}}}", Shapes.OrNothing(new ByName(new Changes(() => Scenario!)))),
        Of("tolerances", "quantities and how they are spread, such as ship_battery.health: {triangular: [70 %, 80 %, 90 %]}", Shapes.OrNothing(new ByName(Shapes.Keys(() => StudyKeys.Tolerance), AreParts: false))),
        Of("batteries_on_offer", "a list of batteries such as - {name: Large, capacity: 20 Ah, rate: 20 h, mass: 6.4 kg}", Shapes.ListOfKeys(() => StudyKeys.Offer, least: 0)),
    ]);

    public static readonly Section FailureCase = new("a failure case", [Of("timeline", "a list of steps", Shapes.OrNothing(Shapes.ListOfKeys(() => Step!, least: 0))), Of("landing", LandingForm, Shapes.Keys(() => SupplyKeys.Landing))]);

    public static readonly Section Step = new("a step",
    [
        Quantity("at", Limits.Time("5 min")),
        Of("when", "{bus: main_bus, below: 12.5 V, for: 60 s} or {warning: panel_light, recognised_after: 2 min}", Shapes.Keys(() => When!)),
        Action("fail"),
        Action("restore"),
        Action("stop"),
        Action("start"),
        Action("open"),
        Action("close"),
        Action("shed"),
        Action("connect"),
        Action("short"),
        Action("break"),
        Action("short_cell"),
        Of("select", "a selector and its new position, such as {ignition_source: backup}", new ByName(Shapes.Text, AreParts: false)),
        Action("idle"),
        Action("cruise"),
        Quantity("lasts", Limits.TimeAboveZero("8 s")),
    ]);

    public static readonly Section When = new("a `when`",
    [
        Text("bus", "the name of a bus"),
        Quantity("below", Limits.Volts("12.5 V")),
        Quantity("for", Limits.Time("60 s")),
        Text("warning", "the name of a low-voltage warning"),
        Quantity("recognised_after", Limits.Time("2 min")),
    ]);

    public static readonly Section Requirement = new("a requirement",
    [
        Text("case", "the name of a failure case"),
        Of("loads", "essential, or names of loads", Shapes.Names),
        Text("bus", "the name of a bus with a cutoff"),
        RequiredQuantity("endure", Limits.TimeAboveZero("30 min")),
        Word("dips", "allowed"),
    ]);

    private static KnownKey Action(string verb) => Of(verb, "one name or a list of names", Shapes.Names);
}
