using System.Collections.Immutable;

namespace Endurance.Scenarios;

/// <summary>One failure and what is done about it.</summary>
public sealed record FailureCase
{
    public required string Name { get; init; }

    /// <summary>In the order of the file; empty runs the aircraft as drawn.</summary>
    public ImmutableArray<TimelineStep> Timeline { get; init; } = [];

    /// <summary><see langword="null"/>: the scenario's.</summary>
    public Landing? Landing { get; init; }
}
