using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The top-level keys, and those of failure cases and requirements.</summary>
internal static class ScenarioKeys
{
    private const string LandingForm = "{connect: [landing_light], lasts: 10 min}";

    public static readonly Section Scenario = new("the scenario",
    [
        Required("endurance", "1"),
        Text("title", "a line of text"),
        Required("system", "14 V or 28 V"),
        Quantity("ambient", Limits.Celsius(-80, 100, "10 degC")),
        Quantity("horizon", Limits.TimeAboveZero("4 h")),
        Text("batteries", "batteries by name"),
        Text("alternators", "alternators by name"),
        Required("buses", "buses by name, such as main_bus: {}"),
        Text("diodes", "diodes by name"),
        Text("feeds", "feeds by name"),
        Text("loads", "loads by name"),
        Text("failure_cases", "failure cases by name"),
        Text("requirements", "a list of requirements"),
        Text("chargers", "chargers by name"),
        Text("converters", "converters by name"),
        Text("grounds", "grounds by name"),
        Text("selectors", "selectors by name"),
        Text("low_voltage_warnings", "low-voltage warnings by name"),
        Text("landing", LandingForm),
        Text("layouts", "layouts by name, such as bridge: {feeds: {essential_normal: {diode: bridge_leg}}}"),
        Text("tolerances", "quantities and how they are spread, such as ship_battery.health: {triangular: [70 %, 80 %, 90 %]}"),
        Text("batteries_on_offer", "a list of batteries such as - {name: Large, capacity: 20 Ah, rate: 20 h, mass: 6.4 kg}"),
    ]);

    public static readonly Section FailureCase = new("a failure case", [Text("timeline", "a list of steps"), Text("landing", LandingForm)]);

    public static readonly Section Step = new("a step",
    [
        Quantity("at", Limits.Time("5 min")),
        Text("when", "{bus: main_bus, below: 12.5 V, for: 60 s} or {warning: panel_light, recognised_after: 2 min}"),
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
        Text("select", "a selector and its new position, such as {ignition_source: backup}"),
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
        Text("loads", "essential, or names of loads"),
        Text("bus", "the name of a bus with a cutoff"),
        RequiredQuantity("endure", Limits.TimeAboveZero("30 min")),
        Text("dips", "allowed"),
    ]);

    private static KnownKey Action(string verb) => Text(verb, "one name or a list of names");
}
