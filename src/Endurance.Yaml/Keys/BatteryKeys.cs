using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of batteries and of what stands inside a battery.</summary>
internal static class BatteryKeys
{
    public static readonly QuantityRange Charge = Limits.Percent("95 %");
    public static readonly QuantityRange Emf = Limits.VoltsFromZero("12.8 V");
    public static readonly QuantityRange Resistance = Limits.Ohms("9 mohm");
    public static readonly QuantityRange Capacity = QuantityRange.Above(Dimension.Charge, "Ah", 0, 10_000, "18 Ah");
    public static readonly QuantityRange Rate = QuantityRange.Above(Dimension.Time, "h", 0, 1000, "20 h");

    public static readonly Section Battery = new("a battery",
    [
        Required("bus", "the name of a bus"),
        Quantity("capacity", Capacity),
        Quantity("rate", Rate),
        Quantity("peukert", Limits.Number(1, 3, "1.15")),
        Of("resistance", "a resistance such as 9 mohm, or a table over charge such as [[0 %, 30 mohm], [100 %, 12 mohm]]", new AnyOf([new Measured(Resistance), Shapes.Pairs(Charge, Resistance, least: 2)])),
        Of("emf", "a table over charge such as [[0 %, 11.0 V], [50 %, 12.3 V], [100 %, 12.85 V]]", Shapes.Pairs(Charge, Emf, least: 2)),
        Word("chemistry", "flooded", "agm", "gel", "nicd", "lifepo4"),
        Quantity("charge_efficiency", Limits.PercentAboveZero(100, "90 %")),
        Quantity("charge_acceptance", QuantityRange.Above(Dimension.PerHour, "/h", 0, 100, "1 /h")),
        Quantity("charge", Charge),
        Quantity("health", Limits.PercentAboveZero(150, "85 %")),
        Quantity("temperature", Limits.Celsius(-80, 150, "5 degC")),
        Quantity("capacity_factor", Limits.PercentAboveZero(200, "60 %")),
        Quantity("resistance_factor", Limits.Number(0.01, 100, "2")),
        Of("ratings", "pairs of hour rate and capacity, such as [[20 h, 18 Ah], [1 h, 11 Ah]]", Shapes.Pairs(Rate, Capacity, least: 1)),
        Quantity("reserve", Rate with { Example = "95 min" }),
        Of("discharge_points", "a list of points such as - {current: 0.9 A, lasts: 20 h, to: 10.5 V}", Shapes.ListOfKeys(() => DischargePoint!)),
        Word("capacity_model", "peukert", "kinetic"),
        Of("kinetic", "{available: 49 %, rate: 0.47 /h, capacity: 17.8 Ah}", Shapes.Keys(() => Kinetic!)),
        Of("polarisation", "one or two pairs such as - {resistance: 6 mohm, time: 40 s}", Shapes.ListOfKeys(() => Polarisation!, most: 2)),
        Of("protection", "{opens_below: 10.0 V, opens_above: 60 A, no_charge_below: 0 degC, recloses_above: 12.5 V}", Shapes.Keys(() => Protection!)),
        Quantity("cells", Limits.Number(1, 100, "6")),
    ]);

    public static readonly Section DischargePoint = new("a discharge point",
    [
        Quantity("current", Limits.Amperes("0.9 A")),
        Quantity("power", Limits.Watts("210 W")),
        RequiredQuantity("lasts", Rate),
        RequiredQuantity("to", Limits.Volts("10.5 V")),
    ]);

    public static readonly Section Kinetic = new("a kinetic model",
    [
        RequiredQuantity("available", QuantityRange.From(Dimension.Fraction, "%", 1, 99, "49 %")),
        RequiredQuantity("rate", QuantityRange.From(Dimension.PerHour, "/h", 0.0001, 1000, "0.47 /h")),
        RequiredQuantity("capacity", Capacity),
    ]);

    public static readonly Section Polarisation = new("a polarisation pair",
    [
        RequiredQuantity("resistance", QuantityRange.Above(Dimension.Resistance, "ohm", 0, 10, "6 mohm")),
        RequiredQuantity("time", QuantityRange.From(Dimension.Time, "s", 1, 360_000, "40 s")),
    ]);

    public static readonly Section Protection = new("a pack protection",
    [
        Quantity("opens_below", Limits.Volts("10.0 V")),
        Quantity("opens_above", Limits.Amperes("60 A")),
        Quantity("no_charge_below", Limits.Celsius(-80, 100, "0 degC")),
        Quantity("recloses_above", Limits.Volts("12.5 V")),
    ]);
}
