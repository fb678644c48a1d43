using Endurance.Library;
using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of diodes, feeds and the parts in a feed.</summary>
internal static class FeedKeys
{
    private const string BusForm = "the name of a bus";

    public const string DiodeForm = "the name of a diode, or {kind: ...}";
    public const string WireForm = "{gauge: 12 AWG, length: 4 ft} or {resistance: 3 mohm}";
    public const string ReturnForm = "{gauge: 12 AWG, length: 5 ft} or {resistance: 3 mohm}, with `to:` a ground where it shares one";
    public const string SwitchForm = "closed, open or {state: open, contact: 1 mohm}";
    public const string BreakerForm = "a rating such as 20 A";
    public const string FuseForm = "a rating such as 15 A";

    public static readonly QuantityRange BreakerRating = Limits.Amperes("20 A");
    public static readonly QuantityRange CoilCurrent = Limits.Amperes("0.8 A");
    public static readonly QuantityRange CoilResistance = Limits.Ohms("18 ohm");
    public static readonly QuantityRange SeriesResistance = Limits.Ohms("2.2 ohm");
    public static readonly QuantityRange ForwardCurrent = Limits.Amperes("1 A");
    public static readonly QuantityRange ForwardDrop = QuantityRange.Above(Dimension.Voltage, "V", 0, 5, "0.35 V");

    public static readonly Section Diode = new("a diode",
    [
        Required("kind", "schottky, silicon, ideal_controller or a class of the library") with
        {
            Shape = Shapes.Word(["schottky", "silicon", "ideal_controller", .. DiodeTable.Rows.Select(row => row.Name)]),
        },
        Of("forward", "two or more points of current and drop, such as [[1 A, 0.35 V], [15 A, 0.52 V]]", Shapes.Pairs(ForwardCurrent, ForwardDrop, least: 2)),
        Quantity("at", Limits.Celsius(-80, 250, "25 degC")),
        Quantity("saturation_current", QuantityRange.From(Dimension.Current, "A", 1e-20, 1, "20 uA")),
        Quantity("ideality", Limits.Number(0.5, 10, "1.05")),
        Quantity("series_resistance", QuantityRange.From(Dimension.Resistance, "ohm", 0, 100, "6 mohm")),
        Quantity("temperature", Limits.Celsius(-80, 250, "27 degC")),
        Quantity("energy_gap", QuantityRange.Above(Dimension.EnergyGap, "eV", 0, 5, "0.69 eV")),
        Quantity("xti", Limits.Number(0, 10, "2")),
        Quantity("leakage", QuantityRange.From(Dimension.Conductance, "S", 0, 10, "1 mS")),
        Quantity("rated", Limits.Amperes("15 A")),
        Quantity("short_resistance", QuantityRange.Above(Dimension.Resistance, "ohm", 0, 100, "2 mohm")),
        Quantity("heat_path", QuantityRange.Above(Dimension.ThermalResistance, "K/W", 0, 1000, "3 K/W")),
        Quantity("max_junction", Limits.Celsius(0, 300, "150 degC")),
        Quantity("on_resistance", QuantityRange.Above(Dimension.Resistance, "ohm", 0, 100, "4 mohm")),
        Quantity("regulated_drop", QuantityRange.From(Dimension.Voltage, "V", 0, 1, "20 mV")),
    ]);

    public static readonly Section Feed = new("a feed",
    [
        Required("from", BusForm),
        Required("to", BusForm),
        Of("diode", DiodeForm, Shapes.Text.Or(() => Diode!)),
        Of("wire", WireForm, Shapes.Keys(() => Wire!)),
        Of("contactor", "{state: closed, coil: 0.8 A, contact: 0.5 mohm}", Shapes.ClosedOrOpen.Or(() => Contactor!)),
        Of("switch", SwitchForm, Shapes.ClosedOrOpen.Or(() => Switch!)),
        Of("breaker", BreakerForm, new Measured(BreakerRating).Or(() => Breaker!)),
        Of("fuse", FuseForm, new Measured(BreakerRating).Or(() => Fuse!)),
        Of("fusible_link", "a rating such as 40 A", new Measured(BreakerRating).Or(() => FusibleLink!)),
        Of("resistor", "a resistance such as 2.2 ohm, or {resistance: 2.2 ohm, rated: 10 W}", new Measured(SeriesResistance).Or(() => Resistor!)),
        Quantity("shunt", Limits.Ohms("1 mohm")),
        Of("return", ReturnForm, Shapes.Keys(() => Return!)),
    ]);

    public static readonly Section Wire = new("a wire",
    [
        Quantity("resistance", Limits.Ohms("3 mohm")),
        Of("gauge", "a wire gauge such as 12 AWG or 2/0 AWG", Shapes.Gauge),
        Quantity("length", QuantityRange.Above(Dimension.Length, "m", 0, 1000, "4 ft")),
        Quantity("temperature", Limits.Celsius(-80, 260, "40 degC")),
    ]);

    public static readonly Section Return = new("a return", [.. Wire.Keys, Text("to", "the name of a ground")]);

    public static readonly Section Resistor = new("a resistor", [RequiredQuantity("resistance", SeriesResistance), Quantity("rated", Limits.Watts("10 W"))]);

    public static readonly Section Contactor = new("a contactor",
    [
        Word("state", "closed", "open"),
        Of("coil", "a coil current such as 0.8 A, or a coil resistance such as 18 ohm", new AnyOf([new Measured(CoilCurrent), new Measured(CoilResistance)])),
        Text("coil_bus", BusForm),
        Quantity("contact", Limits.Ohms("0.5 mohm")),
        Quantity("pull_in", Limits.Amperes("3 A")),
        Quantity("pulls_in_above", Limits.Volts("9 V")),
        Quantity("drops_out_below", Limits.Volts("4 V")),
        Word("contacts", "normally_open", "normally_closed"),
    ]);

    public static readonly Section Switch = new("a switch", [Word("state", "closed", "open"), Quantity("contact", Limits.Ohms("1 mohm"))]);

    public static readonly Section Breaker = new("a breaker",
    [
        RequiredQuantity("rated", BreakerRating),
        Quantity("resistance", Limits.Ohms("5 mohm")),
        Word("state", "closed", "open"),
        Quantity("factor", Limits.Number(1, 10, "1.25")),
        Quantity("time_constant", QuantityRange.Above(Dimension.Time, "s", 0, 3600, "50 s")),
    ]);

    public static readonly Section Fuse = new("a fuse",
    [
        RequiredQuantity("rated", BreakerRating),
        Quantity("resistance", Limits.Ohms("5 mohm")),
        Quantity("factor", Limits.Number(1, 10, "1.25")),
        Quantity("time_constant", QuantityRange.Above(Dimension.Time, "s", 0, 3600, "50 s")),
    ]);

    public static readonly Section FusibleLink = Fuse with { Kind = "a fusible link" };
}
