using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of loads and of what stands inside a load.</summary>
internal static class LoadKeys
{
    public static readonly Section Load = new("a load",
    [
        Text("bus", "the name of a bus"),
        Text("inputs", "two or more supplies such as - {bus: essential_bus, diode: steering_diode}"),
        Quantity("power", Limits.Watts("28 W")),
        Quantity("current", Limits.Amperes("0.6 A")),
        Quantity("resistance", Limits.Ohms("1.3 ohm")),
        Quantity("minimum", Limits.Volts("10.0 V")),
        Quantity("restart", Limits.Volts("11.0 V")),
        Quantity("start_up", Limits.Time("45 s")),
        Quantity("duty", Limits.PercentAboveZero(100, "10 %")),
        Text("essential", "true or false"),
        Text("state", "on or off"),
        Text("wire", FeedKeys.WireForm),
        Text("switch", FeedKeys.SwitchForm),
        Text("breaker", FeedKeys.BreakerForm),
        Text("fuse", FeedKeys.FuseForm),
        Text("return", FeedKeys.ReturnForm),
        Quantity("peak", Limits.Amperes("2 A")),
        Text("inrush", "{current: 12 A, lasts: 30 s}"),
        Text("needs", "one name of a load or a list of names"),
        Text("phase", "a phase of flight such as landing"),
        Text("basis", "manual, plate or measured"),
        Text("measured_on", "a date such as 2026-05-02"),
    ]);

    /// <summary>Nothing but <c>state</c> of the load switches it by hand.</summary>
    public static readonly Section Breaker = new("a breaker of a load", [.. FeedKeys.Breaker.Keys.Where(key => key.Name is not "state")]);

    public static readonly Section Input = new("an input", [Required("bus", "the name of a bus"), Required("diode", FeedKeys.DiodeForm)]);

    public static readonly Section Inrush = new("an inrush",
    [
        RequiredQuantity("current", Limits.Amperes("12 A")),
        RequiredQuantity("lasts", QuantityRange.From(Dimension.Time, "s", 1, 36_000, "30 s")),
    ]);
}
