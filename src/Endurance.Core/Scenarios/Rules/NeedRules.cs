using System.Collections.Immutable;
using Endurance.Components;

namespace Endurance.Scenarios.Rules;

/// <summary>The loads that a load needs exist, and none needs itself by way of others.</summary>
internal static class NeedRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario)
    {
        ImmutableArray<string> names = [.. scenario.Loads.Select(load => load.Name)];
        var inRing = new HashSet<string>(StringComparer.Ordinal);
        foreach (var load in scenario.Loads)
        {
            foreach (var need in load.Needs.Where(need => !names.Contains(need, StringComparer.Ordinal)))
                yield return ReferenceRules.Unknown($"loads.{load.Name}.needs.{need}", need, "load", names);
            if (inRing.Contains(load.Name) || Ring(scenario, load.Name) is not { } ring)
                continue;
            inRing.UnionWith(ring);
            yield return RuleFinding.Error("needs-in-a-ring", $"loads.{load.Name}.needs", load.Name, $"`{load.Name}` needs itself: {string.Join(" needs ", [.. ring, load.Name])}", "needs that end at a load without any");
        }
    }

    /// <summary>The shortest way from a load back to itself; <see langword="null"/> when there is none.</summary>
    private static ImmutableArray<string>? Ring(Scenario scenario, string start)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var ways = new Queue<ImmutableArray<string>>([[start]]);
        while (ways.TryDequeue(out var way))
        {
            var load = scenario.Loads.FirstOrDefault(load => string.Equals(load.Name, way[^1], StringComparison.Ordinal));
            foreach (var need in load?.Needs ?? [])
            {
                if (string.Equals(need, start, StringComparison.Ordinal))
                    return way;
                if (seen.Add(need))
                    ways.Enqueue(way.Add(need));
            }
        }

        return null;
    }
}
