using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of batteries, alternators and buses.</summary>
internal static class PartKeys
{
    private const string BusForm = "the name of a bus";

    public static readonly QuantityRange Charge = Limits.Percent("95 %");
    public static readonly QuantityRange Emf = Limits.VoltsFromZero("12.8 V");
    public static readonly QuantityRange BatteryResistance = Limits.Ohms("9 mohm");

    public static readonly Section Battery = new("a battery",
    [
        Required("bus", BusForm),
        RequiredQuantity("capacity", QuantityRange.Above(Dimension.Charge, "Ah", 0, 10_000, "18 Ah")),
        RequiredQuantity("rate", QuantityRange.Above(Dimension.Time, "h", 0, 1000, "20 h")) with { Form = "the time of discharge at which the capacity was rated, such as 20 h" },
        RequiredQuantity("peukert", Limits.Number(1, 3, "1.15")),
        Required("resistance", "a resistance such as 9 mohm, or a table over charge such as [[0 %, 30 mohm], [100 %, 12 mohm]]"),
        Required("emf", "a table over charge such as [[0 %, 11.0 V], [50 %, 12.3 V], [100 %, 12.85 V]]"),
        Quantity("charge_efficiency", Limits.PercentAboveZero(100, "90 %")),
        Quantity("charge", Charge),
        Quantity("health", Limits.PercentAboveZero(150, "85 %")),
        Quantity("temperature", Limits.Celsius(-80, 150, "5 degC")),
        Quantity("capacity_factor", Limits.PercentAboveZero(200, "60 %")),
        Quantity("resistance_factor", Limits.Number(0.01, 100, "2")),
        NotYet("chemistry"),
        NotYet("charge_acceptance"),
        NotYet("ratings"),
        NotYet("reserve"),
        NotYet("discharge_points"),
        NotYet("capacity_model"),
        NotYet("kinetic"),
        NotYet("polarisation"),
        NotYet("protection"),
        NotYet("cells"),
    ]);

    public static readonly Section Alternator = new("an alternator",
    [
        Required("bus", BusForm),
        RequiredQuantity("setpoint", Limits.Volts("14.2 V")),
        RequiredQuantity("rated", Limits.Amperes("40 A")),
        Quantity("droop", Limits.Ohms("5 mohm")),
        Text("driven_by", "the name of an engine"),
        Text("state", "on or off"),
        Quantity("limit_idle", Limits.Amperes("18 A")),
        Quantity("trips_above", Limits.Volts("16.2 V")),
        Text("field", "{bus: main_bus, current: 3 A, switch: on}"),
    ]);

    public static readonly Section Field = new("a field",
    [
        Required("bus", BusForm),
        RequiredQuantity("current", Limits.Amperes("3 A")),
        Text("switch", "on or off"),
    ]);

    public static readonly Section Bus = new("a bus", [Quantity("cutoff", Limits.Volts("11.0 V"))]);
}
