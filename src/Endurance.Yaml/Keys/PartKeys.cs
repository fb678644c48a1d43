using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of alternators and buses.</summary>
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
        Word("state", "on", "off"),
        Quantity("limit_idle", Limits.Amperes("18 A")),
        Quantity("trips_above", Limits.Volts("16.2 V")),
        Of("field", "{bus: main_bus, current: 3 A, switch: on}", Shapes.Keys(() => Field!)),
    ]);

    public static readonly Section Field = new("a field",
    [
        Required("bus", BusForm),
        RequiredQuantity("current", Limits.Amperes("3 A")),
        Word("switch", "on", "off"),
    ]);

    public static readonly Section Bus = new("a bus", [Quantity("cutoff", Limits.Volts("11.0 V"))]);
}
