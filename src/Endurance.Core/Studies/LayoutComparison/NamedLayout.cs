using Endurance.Scenarios;

namespace Endurance.Studies.LayoutComparison;

/// <summary>One way to wire an aircraft.</summary>
/// <param name="Name">As the comparison calls it.</param>
/// <param name="Scenario">The aircraft wired that way, with at least one failure case.</param>
public sealed record NamedLayout(string Name, Scenario Scenario);
