using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What became of a low-voltage warning in a run.</summary>
public sealed record WarningOutcome
{
    public required string Name { get; init; }

    /// <summary><see langword="null"/>: it never came on.</summary>
    public required Duration? TimeOn { get; init; }

    /// <summary>State of charge of every battery when it came on, 0 to 1, in the order of the scenario; empty when it never did.</summary>
    public required ImmutableArray<double> ChargesWhenOn { get; init; }

    /// <summary>A step had made it fail by the end of the run.</summary>
    public required bool HasFailed { get; init; }
}
