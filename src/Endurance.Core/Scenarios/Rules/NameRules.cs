using System.Collections.Immutable;

namespace Endurance.Scenarios.Rules;

/// <summary>Names are unique over all kinds of parts and engines, and the names of groups are reserved.</summary>
internal static class NameRules
{
    private static readonly ImmutableArray<string> Reserved = ["all", "essential", "non_essential"];

    public static IEnumerable<RuleFinding> Check(Scenario scenario, ImmutableArray<string> namedDiodes)
    {
        var first = new Dictionary<string, Named>(StringComparer.Ordinal);
        foreach (var named in All(scenario, namedDiodes))
        {
            if (Reserved.Contains(named.Name, StringComparer.Ordinal))
                yield return RuleFinding.Error("reserved-name", named.Path, named.Name, $"`{named.Name}` is the name of a group of loads and cannot name {named.Kind}", "another name");
            else if (!first.TryAdd(named.Name, named) && !(named.IsEngine && first[named.Name].IsEngine))
                yield return RuleFinding.Error("duplicate-name", named.Path, first[named.Name].Path, $"`{named.Name}` cannot name {named.Kind}: it already names {first[named.Name].Kind}", "a name that no other part has");
        }
    }

    private static IEnumerable<Named> All(Scenario scenario, ImmutableArray<string> namedDiodes) =>
    [
        .. scenario.Batteries.Select(part => new Named(part.Name, "a battery", $"batteries.{part.Name}")),
        .. scenario.Alternators.Select(part => new Named(part.Name, "an alternator", $"alternators.{part.Name}")),
        .. scenario.Buses.Select(part => new Named(part.Name, "a bus", $"buses.{part.Name}")),
        .. namedDiodes.Select(name => new Named(name, "a diode", $"diodes.{name}")),
        .. scenario.Feeds.Select(part => new Named(part.Name, "a feed", $"feeds.{part.Name}")),
        .. scenario.Loads.Select(part => new Named(part.Name, "a load", $"loads.{part.Name}")),
        .. scenario.Chargers.Select(part => new Named(part.Name, "a charger", $"chargers.{part.Name}")),
        .. scenario.Grounds.Select(part => new Named(part.Name, "a ground", $"grounds.{part.Name}")),
        .. scenario.Selectors.Select(part => new Named(part.Name, "a selector", $"selectors.{part.Name}")),
        .. scenario.Warnings.Select(part => new Named(part.Name, "a low-voltage warning", $"low_voltage_warnings.{part.Name}")),
        .. scenario.Alternators.Where(part => part.DrivenBy is not null)
            .Select(part => new Named(part.DrivenBy!, "an engine", $"alternators.{part.Name}.driven_by", IsEngine: true)),
    ];

    private sealed record Named(string Name, string Kind, string Path, bool IsEngine = false);
}
