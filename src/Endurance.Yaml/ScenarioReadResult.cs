using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Yaml;

/// <summary>A scenario, or the reasons why there is none.</summary>
/// <param name="Scenario"><see langword="null"/> when any diagnostic is an error.</param>
/// <param name="Diagnostics">In order of line and column.</param>
public sealed record ScenarioReadResult(Scenario? Scenario, ImmutableArray<Diagnostic> Diagnostics);
