namespace Endurance.Scenarios.Rules;

/// <summary>Finds buses that no source could ever reach, even with every switch closed.</summary>
internal static class FeedingRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario)
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
}
