using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What became of a breaker, fuse or fusible link in a run.</summary>
public sealed record ProtectionOutcome
{
    /// <summary>Name of the feed or load it protects.</summary>
    public required string Owner { get; init; }

    public required ProtectionKind Kind { get; init; }

    public required Current Rating { get; init; }

    /// <summary>First opening by too much current; <see langword="null"/>: it held.</summary>
    public required Duration? TimeOpened { get; init; }

    /// <summary>Current at that instant, without sign; <see langword="null"/>: it held.</summary>
    public required Current? OpenedAt { get; init; }
}
