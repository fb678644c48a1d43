using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Studies.LayoutComparison;

/// <summary>What is asked of a layout, apart from how it is wired.</summary>
public static class LayoutBasis
{
    /// <summary>In which ways two aircraft are asked different things, so that their minutes do not compare; empty when they do.</summary>
    public static ImmutableArray<string> Differences(Scenario one, Scenario other)
    {
        bool Same<T>(Func<Scenario, IEnumerable<T>> asked) => asked(one).ToHashSet().SetEquals(asked(other));
        IEnumerable<string?> differences =
        [
            one.System == other.System ? null : "another system voltage",
            Equals(one.Ambient, other.Ambient) ? null : "another ambient temperature",
            Equals(one.Horizon, other.Horizon) ? null : "another horizon",
            Same(scenario => scenario.Loads.Select(load => (load.Name, load.Demand, load.Duty, load.Minimum, load.IsEssential, load.IsOn))) ? null : "other loads",
            Same(scenario => scenario.FailureCases.Select(failureCase => failureCase.Name)) ? null : "other failure cases",
            Same(scenario => scenario.Requirements.Select(asked => (asked.Case, asked.Bus, string.Join('\n', asked.Loads), asked.Endure, asked.DipsAllowed))) ? null : "other requirements",
        ];
        return [.. differences.OfType<string>()];
    }
}
