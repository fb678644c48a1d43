using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.Adjustment;

/// <summary>What may be varied of a feed.</summary>
internal static class FeedQuantities
{
    public static IEnumerable<AdjustableQuantity> Of(Scenario scenario, int i)
    {
        var feed = scenario.Feeds[i];
        yield return new(feed.Name + ".resistance", QuantityKind.Ohms, 1e-6, 1e3, s => WireOhms(s.Feeds[i]),
            (s, value) => s with { Feeds = s.Feeds.SetItem(i, s.Feeds[i] with { Wire = new Wire { Resistance = Resistance.FromOhms(value) } }) });
        if (feed.Diode is JunctionDiode)
        {
            yield return new(feed.Name + ".diode_drop", QuantityKind.Volts, -0.5, 2, _ => 0,
                (s, value) => s with { Feeds = s.Feeds.SetItem(i, s.Feeds[i] with { Diode = Raised((JunctionDiode)s.Feeds[i].Diode!, value) }) });
        }
    }

    private static double WireOhms(Feed feed) => feed.Wire?.Resistance.Ohms ?? Feed.LeastResistance.Ohms;

    /// <summary>A diode whose forward voltage is higher by so many volts at any current: its saturation current falls by exp(v/(n k T/q)).</summary>
    private static JunctionDiode Raised(JunctionDiode diode, double volts) => diode with
    {
        SaturationCurrent = diode.SaturationCurrent * Math.Exp(-volts / diode.EmissionVoltageAt(diode.Temperature).Volts),
    };
}
