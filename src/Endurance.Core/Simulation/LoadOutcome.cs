using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What became of a load in a run. Times are <see langword="null"/> when not reached within the horizon.</summary>
public sealed record LoadOutcome
{
    public required string Name { get; init; }

    /// <summary>First instant at which it was connected and not powered.</summary>
    public required Duration? TimePowered { get; init; }

    /// <summary>Last loss after which it never came back.</summary>
    public required Duration? TimeLostForGood { get; init; }

    /// <summary>Of the first loss.</summary>
    public required LossReason? LostBecause { get; init; }

    /// <summary>When a step switched it off, for the last time and for good; <see langword="null"/>: it is connected at the end, or was never connected.</summary>
    public required Duration? TimeShed { get; init; }

    /// <summary>It was connected at some time in the run.</summary>
    public required bool WasConnected { get; init; }
}
