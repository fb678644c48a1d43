using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of alternators, buses and loads.</summary>
internal static class PartKeys
{
    private const string BusForm = "the name of a bus";

    public static readonly Section Alternator = new("an alternator",
    [
        Required("bus", BusForm),
        RequiredQuantity("setpoint", Limits.Volts("14.2 V")),
        RequiredQuantity("rated", Limits.Amperes("40 A")),
        Quantity("droop", Limits.Ohms("5 mohm")),
        Text("driven_by", "the name of an engine"),
        Text("state", "on or off"),
        NotYet("limit_idle"),
        NotYet("trips_above"),
        NotYet("field"),
    ]);

    public static readonly Section Bus = new("a bus", [Quantity("cutoff", Limits.Volts("11.0 V"))]);

    public static readonly Section Load = new("a load",
    [
        Required("bus", BusForm),
        Quantity("power", Limits.Watts("28 W")),
        Quantity("current", Limits.Amperes("0.6 A")),
        Quantity("resistance", Limits.Ohms("1.3 ohm")),
        Quantity("minimum", Limits.Volts("10.0 V")),
        Quantity("restart", Limits.Volts("11.0 V")),
        Quantity("start_up", Limits.Time("45 s")),
        Quantity("duty", Limits.PercentAboveZero(100, "10 %")),
        Text("essential", "true or false"),
        Text("state", "on or off"),
        NotYet("wire"),
        NotYet("switch"),
        NotYet("breaker"),
        NotYet("fuse"),
        NotYet("return"),
        NotYet("inputs"),
        NotYet("peak"),
        NotYet("inrush"),
        NotYet("needs"),
        NotYet("phase"),
        NotYet("basis"),
        NotYet("measured_on"),
    ]);
}
