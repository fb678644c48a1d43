using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A place where several returns meet before they reach the airframe; its drop is common to all of them.</summary>
public sealed record GroundPoint
{
    public required string Name { get; init; }

    /// <summary>To the airframe; above zero.</summary>
    public required Resistance Resistance { get; init; }
}
