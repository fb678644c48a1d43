using System.Collections.Immutable;

namespace Endurance.Components;

/// <summary>A switch that closes one of several feeds at a time.</summary>
public sealed record Selector
{
    public required string Name { get; init; }

    /// <summary>Position and the feed it closes; at least two.</summary>
    public required ImmutableArray<(string Position, string Feed)> Positions { get; init; }

    /// <summary>Position at time zero.</summary>
    public required string At { get; init; }
}
