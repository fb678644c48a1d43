using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>Actions taken together when a trigger comes.</summary>
public sealed record TimelineStep
{
    public required Trigger Trigger { get; init; }

    /// <summary>One target each, in the order of the file; groups are already spelt out.</summary>
    public required ImmutableArray<TimelineAction> Actions { get; init; }

    /// <summary>After this the actions are undone; <see langword="null"/>: never. Above zero.</summary>
    public Duration? Lasts { get; init; }
}
