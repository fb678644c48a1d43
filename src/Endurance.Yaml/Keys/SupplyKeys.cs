using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of chargers, ground points, selectors, low-voltage warnings and landings.</summary>
internal static class SupplyKeys
{
    private const string BusForm = "the name of a bus";

    public static readonly Section Charger = Regulated("a charger");

    /// <summary>A charger under another name.</summary>
    public static readonly Section Converter = Regulated("a converter");

    public static readonly Section Ground = new("a ground", [RequiredQuantity("resistance", Limits.Ohms("0.5 mohm"))]);

    public static readonly Section Selector = new("a selector",
    [
        Required("positions", "positions and their feeds, such as {normal: ignition_feed, backup: essential_normal}") with { Shape = new ByName(Shapes.Text) },
        Required("at", "the name of a position"),
    ]);

    public static readonly Section Warning = new("a low-voltage warning",
    [
        Required("senses", BusForm),
        RequiredQuantity("below", Limits.Volts("12.5 V")),
        Quantity("for", Limits.Time("5 s")),
    ]);

    public static readonly Section Landing = new("a landing",
    [
        Required("connect", "one name of a load or a list of names") with { Shape = Shapes.Names },
        RequiredQuantity("lasts", Limits.TimeAboveZero("10 min")),
    ]);

    private static Section Regulated(string kind) => new(kind,
    [
        Required("from", BusForm),
        Required("to", BusForm),
        RequiredQuantity("output", Limits.Volts("13.8 V")),
        RequiredQuantity("limit", Limits.Amperes("2 A")),
        RequiredQuantity("efficiency", QuantityRange.From(Dimension.Fraction, "%", 1, 100, "90 %")),
        Quantity("droop", Limits.Ohms("50 mohm")),
        Quantity("cut_in", Limits.Volts("13.0 V")),
        Quantity("cut_out", Limits.Volts("12.6 V")),
        Word("state", "on", "off"),
    ]);
}
