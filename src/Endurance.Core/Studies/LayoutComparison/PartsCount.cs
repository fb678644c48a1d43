using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Studies.LayoutComparison;

/// <summary>Counts what has to be bought, mounted, and can fail, between the sources and the loads.</summary>
/// <remarks>Sources, chargers, selectors and warnings, and each diode, contactor, switch, breaker, fuse, fusible link, resistor and shunt. Wires, buses and the loads themselves do not count.</remarks>
internal static class PartsCount
{
    public static int Of(Scenario scenario) =>
        scenario.Batteries.Length + scenario.Alternators.Length + scenario.Chargers.Length + scenario.Selectors.Length + scenario.Warnings.Length
        + scenario.Feeds.Sum(OfFeed) + scenario.Loads.Sum(OfLoad);

    private static int OfFeed(Feed feed) =>
        Present(feed.Diode, feed.Contactor, feed.Switch, feed.Breaker, feed.Fuse, feed.FusibleLink, feed.Resistor) + (feed.Shunt.Ohms > 0 ? 1 : 0);

    private static int OfLoad(Load load) => Present(load.Switch, load.Breaker, load.Fuse) + load.Inputs.Length;

    private static int Present(params ReadOnlySpan<object?> parts)
    {
        var count = 0;
        foreach (var part in parts)
            count += part is null ? 0 : 1;
        return count;
    }
}
