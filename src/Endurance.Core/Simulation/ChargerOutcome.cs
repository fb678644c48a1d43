using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What a charger or converter gave in a run.</summary>
public sealed record ChargerOutcome
{
    public required string Name { get; init; }

    /// <summary>At its output; zero or more.</summary>
    public required Current HighestCurrent { get; init; }
}
