using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.Adjustment;

/// <summary>What may be varied of a feed.</summary>
internal static class FeedQuantities
{
    /// <summary>Volts that a forward voltage may be moved by.</summary>
    public const double LeastDrop = -0.5;

    /// <summary>Volts that a forward voltage may be moved by.</summary>
    public const double MostDrop = 2;

    public static IEnumerable<AdjustableQuantity> Of(Scenario scenario, int i)
    {
        var feed = scenario.Feeds[i];
        yield return new(feed.Name + ".resistance", QuantityKind.Ohms, 1e-6, 1e3, s => WireOhms(s.Feeds[i]),
            (s, value) => s with { Feeds = s.Feeds.SetItem(i, s.Feeds[i] with { Wire = new Wire { Resistance = Resistance.FromOhms(value) } }) });
        if (feed.Diode is JunctionDiode)
        {
            yield return new(feed.Name + ".diode_drop", QuantityKind.Volts, LeastDrop, MostDrop, _ => 0,
                (s, value) => s with { Feeds = s.Feeds.SetItem(i, s.Feeds[i] with { Diode = Raised((JunctionDiode)s.Feeds[i].Diode!, value) }) });
        }
    }

    /// <summary>So many times the resistance of every feed's conductors and contacts. Diodes, resistors and shunts are parts of their own and stay.</summary>
    public static Scenario ScaleAll(Scenario s, double factor) => s with { Feeds = [.. s.Feeds.Select(feed => Scaled(feed, factor))] };

    /// <summary>So many volts more across every junction diode of feeds and loads, at any current.</summary>
    public static Scenario RaiseAll(Scenario s, double volts) => s with
    {
        Feeds = [.. s.Feeds.Select(feed => feed with { Diode = Raised(feed.Diode, volts) })],
        Loads = [.. s.Loads.Select(load => load with { Inputs = [.. load.Inputs.Select(input => input with { Diode = Raised(input.Diode, volts)! })] })],
    };

    private static Feed Scaled(Feed feed, double factor) => feed with
    {
        Wire = Scaled(feed.Wire, factor),
        Contactor = feed.Contactor is { } contactor ? contactor with { ContactResistance = contactor.ContactResistance * factor } : null,
        Switch = feed.Switch is { } contact ? contact with { ContactResistance = contact.ContactResistance * factor } : null,
        Breaker = Scaled(feed.Breaker, factor),
        Fuse = Scaled(feed.Fuse, factor),
        FusibleLink = Scaled(feed.FusibleLink, factor),
        Return = feed.Return is { } back ? back with { Wire = Scaled(back.Wire, factor)! } : null,
    };

    private static Wire? Scaled(Wire? wire, double factor) => wire is null ? null : wire with { Resistance = wire.Resistance * factor };

    private static Protection? Scaled(Protection? protection, double factor) => protection is null ? null : protection with { Resistance = protection.Resistance * factor };

    private static Diode? Raised(Diode? diode, double volts) => diode is JunctionDiode junction ? Raised(junction, volts) : diode;

    private static double WireOhms(Feed feed) => feed.Wire?.Resistance.Ohms ?? Feed.LeastResistance.Ohms;

    /// <summary>A diode whose forward voltage is higher by so many volts at any current: its saturation current falls by exp(v/(n k T/q)).</summary>
    private static JunctionDiode Raised(JunctionDiode diode, double volts) => diode with
    {
        SaturationCurrent = diode.SaturationCurrent * Math.Exp(-volts / diode.EmissionVoltageAt(diode.Temperature).Volts),
    };
}
