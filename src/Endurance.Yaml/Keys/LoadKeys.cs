using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of loads and of what stands inside a load.</summary>
internal static class LoadKeys
{
    public static readonly Section Load = new("a load",
    [
        Text("bus", "the name of a bus"),
        Of("inputs", "two or more supplies such as - {bus: essential_bus, diode: steering_diode}", Shapes.ListOfKeys(() => Input!, least: 2)),
        Quantity("power", Limits.Watts("28 W")),
        Quantity("current", Limits.Amperes("0.6 A")),
        Quantity("resistance", Limits.Ohms("1.3 ohm")),
        Quantity("minimum", Limits.Volts("10.0 V")),
        Quantity("restart", Limits.Volts("11.0 V")),
        Quantity("start_up", Limits.Time("45 s")),
        Quantity("duty", Limits.PercentAboveZero(100, "10 %")),
        Word("essential", "true", "false"),
        Word("state", "on", "off"),
        Of("wire", FeedKeys.WireForm, Shapes.Keys(() => FeedKeys.Wire)),
        Of("switch", FeedKeys.SwitchForm, Shapes.ClosedOrOpen.Or(() => FeedKeys.Switch)),
        Of("breaker", FeedKeys.BreakerForm, new Measured(FeedKeys.BreakerRating).Or(() => Breaker!)),
        Of("fuse", FeedKeys.FuseForm, new Measured(FeedKeys.BreakerRating).Or(() => FeedKeys.Fuse)),
        Of("return", FeedKeys.ReturnForm, Shapes.Keys(() => FeedKeys.Return)),
        Quantity("peak", Limits.Amperes("2 A")),
        Of("inrush", "{current: 12 A, lasts: 30 s}", Shapes.Keys(() => Inrush!)),
        Of("needs", "one name of a load or a list of names", Shapes.Names),
        Text("phase", "a phase of flight such as landing"),
        Word("basis", "manual", "plate", "measured"),
        Of("measured_on", "a date such as 2026-05-02", Shapes.Date),
    ]);

    /// <summary>Nothing but <c>state</c> of the load switches it by hand.</summary>
    public static readonly Section Breaker = new("a breaker of a load", [.. FeedKeys.Breaker.Keys.Where(key => key.Name is not "state")]);

    public static readonly Section Input = new("an input", [Required("bus", "the name of a bus"), Required("diode", FeedKeys.DiodeForm) with { Shape = Shapes.Text.Or(() => FeedKeys.Diode) }]);

    public static readonly Section Inrush = new("an inrush",
    [
        RequiredQuantity("current", Limits.Amperes("12 A")),
        RequiredQuantity("lasts", QuantityRange.From(Dimension.Time, "s", 1, 36_000, "30 s")),
    ]);
}
