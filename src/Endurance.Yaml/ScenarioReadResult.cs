using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Yaml;

/// <summary>A scenario, or the reasons why there is none.</summary>
/// <param name="Scenario"><see langword="null"/> when any diagnostic is an error.</param>
/// <param name="Diagnostics">In order of line and column.</param>
public sealed record ScenarioReadResult(Scenario? Scenario, ImmutableArray<Diagnostic> Diagnostics)
{
    /// <summary>Names of the file's layouts, in its order; empty when the text could not be parsed.</summary>
    public ImmutableArray<string> Layouts { get; init; } = [];
}
