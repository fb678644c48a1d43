using Endurance.Components;

namespace Endurance.Scenarios.Rules;

/// <summary>Finds buses that no source could ever reach, even with every switch closed, and chargers that their own output comes back to.</summary>
internal static class FeedingRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario) => [.. Unfed(scenario), .. Circles(scenario)];

    private static IEnumerable<RuleFinding> Unfed(Scenario scenario)
    {
        var sources = scenario.Batteries.Select(part => part.Bus).Concat(scenario.Alternators.Select(part => part.Bus));
        var fed = Reach.From(sources, scenario.Feeds, scenario.Chargers);

        foreach (var bus in scenario.Buses.Where(bus => !fed.Contains(bus.Name)))
        {
            yield return RuleFinding.Warning(
                "bus-not-fed", $"buses.{bus.Name}", bus.Name,
                $"nothing feeds the bus `{bus.Name}`: its loads are never powered",
                "a battery or an alternator on it, or a feed or charger to it from a bus that is fed");
        }
    }

    /// <summary>As switched at the start: a charger in a circle takes back what it gives, until its limit or its losses stop it.</summary>
    private static IEnumerable<RuleFinding> Circles(Scenario scenario)
    {
        var closed = scenario.Feeds.Where(scenario.IsDrawnClosed).ToArray();
        foreach (var charger in scenario.Chargers.Where(charger => charger.IsOn))
        {
            if (!Reach.From([charger.To], closed, [.. scenario.Chargers.Where(other => other.IsOn)]).Contains(charger.From))
                continue;
            yield return RuleFinding.Warning(
                "charger-feeds-itself", $"chargers.{charger.Name}", charger.Name,
                $"what `{charger.Name}` gives to `{charger.To}` comes back to its own input on `{charger.From}`: it can feed itself up to its limit and only make heat",
                "a diode or an open contact on the way back");
        }
    }
}
