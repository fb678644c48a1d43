using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The top-level keys, and those of failure cases and requirements.</summary>
internal static class ScenarioKeys
{
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
        NotYet("chargers"),
        NotYet("converters"),
        NotYet("grounds"),
        NotYet("selectors"),
        NotYet("low_voltage_warnings"),
        NotYet("landing"),
        NotYet("layouts"),
        NotYet("tolerances"),
        NotYet("batteries_on_offer"),
    ]);

    public static readonly Section FailureCase = new("a failure case", [Text("timeline", "a list of steps"), NotYet("landing")]);

    public static readonly Section Step = new("a step",
    [
        Quantity("at", Limits.Time("5 min")),
        Text("when", "{bus: main_bus, below: 12.5 V, for: 60 s}"),
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
        NotYet("select"),
        NotYet("lasts"),
    ]);

    public static readonly Section When = new("a `when`",
    [
        Required("bus", "the name of a bus"),
        RequiredQuantity("below", Limits.Volts("12.5 V")),
        Quantity("for", Limits.Time("60 s")),
        NotYet("warning"),
        NotYet("recognised_after"),
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
