using System.Collections.Immutable;
using static System.FormattableString;

namespace Endurance.Scenarios.Rules;

/// <summary>A requirement names a case, loads or a bus that can be judged, and a time within the horizon.</summary>
internal static class RequirementRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario)
    {
        ImmutableArray<string> cases = [.. scenario.FailureCases.Select(failure => failure.Name)];
        ImmutableArray<string> loads = [.. scenario.Loads.Select(load => load.Name)];
        foreach (var (requirement, index) in scenario.Requirements.Select((requirement, index) => (requirement, index)))
        {
            var path = Invariant($"requirements.{index}");
            if (requirement.Case is { } name && !cases.Contains(name, StringComparer.Ordinal))
                yield return ReferenceRules.Unknown($"{path}.case", name, "failure case", cases);
            foreach (var load in requirement.Loads.Where(load => !loads.Contains(load, StringComparer.Ordinal)))
                yield return ReferenceRules.Unknown($"{path}.loads.{load}", load, "load", loads);
            if (requirement.Bus is { } bus && BusFault(scenario, bus, $"{path}.bus") is { } fault)
                yield return fault;
            if (requirement.Bus is null && requirement.Loads.IsEmpty)
                yield return RuleFinding.Error("empty-requirement", $"{path}.loads", requirement.LoadsLabel ?? "", "the requirement is about no load at all", "a load that is marked `essential: true`, or the names of loads");
            if (requirement.Endure > scenario.Horizon)
            {
                yield return RuleFinding.Error(
                    "endure-beyond-horizon", $"{path}.endure", Invariant($"{requirement.Endure.Minutes:0.###} min"),
                    Invariant($"the requirement of {requirement.Endure.Minutes:0.###} min lies beyond the horizon of {scenario.Horizon.Minutes:0.###} min"),
                    "a shorter time, or a longer `horizon`");
            }
        }
    }

    private static RuleFinding? BusFault(Scenario scenario, string name, string path)
    {
        var bus = scenario.Buses.FirstOrDefault(bus => string.Equals(bus.Name, name, StringComparison.Ordinal));
        if (bus is null)
            return ReferenceRules.Unknown(path, name, "bus", [.. scenario.Buses.Select(known => known.Name)]);
        return bus.Cutoff is null
            ? RuleFinding.Error("bus-without-cutoff", path, name, $"the bus `{name}` has no cutoff, so nothing says when it is lost", $"`cutoff` at the bus, such as `{name}: {{cutoff: 11.0 V}}`")
            : null;
    }
}
