using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What became of an alternator in a run.</summary>
public sealed record AlternatorOutcome
{
    public required string Name { get; init; }

    /// <summary>Zero or more.</summary>
    public required Current HighestCurrent { get; init; }

    /// <summary>First instant at which it gave current with no battery able to supply its bus; <see langword="null"/>: never.</summary>
    public required Duration? TimeAlone { get; init; }

    /// <summary>First instant at which it could have generated but for its field's dead bus; <see langword="null"/>: never.</summary>
    public Duration? TimeUnexcited { get; init; }
}
