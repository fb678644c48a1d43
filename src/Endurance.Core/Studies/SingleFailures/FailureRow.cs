using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.SingleFailures;

/// <summary>What one failed part, or two, do to one failure case.</summary>
public sealed record FailureRow
{
    /// <summary>Names of the parts, joined by a plus sign when there are two.</summary>
    public required string Part { get; init; }

    public required string Mode { get; init; }

    public required string Case { get; init; }

    /// <summary><see langword="null"/>: nothing is lost within the horizon.</summary>
    public required Duration? Endurance { get; init; }

    public required Verdict Verdict { get; init; }

    /// <summary>Essential loads lost before a requirement of theirs ends, or at all where none applies.</summary>
    public required ImmutableArray<string> Lost { get; init; }

    /// <summary>Minutes of each essential load in the order of the scenario; <see langword="null"/>: not lost within the horizon.</summary>
    public required ImmutableArray<Duration?> Loads { get; init; }

    /// <summary>Parts began to switch each other without end, from when on nothing counts as powered; <see langword="null"/> when none did.</summary>
    public BreakOff? BreakOff { get; init; }

    /// <summary>What would show the failure in normal operation, or which ground test does.</summary>
    public required string RevealedBy { get; init; }

    /// <summary>Nothing in normal operation shows the failure.</summary>
    public required bool IsHidden { get; init; }
}
