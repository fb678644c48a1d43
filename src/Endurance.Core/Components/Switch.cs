using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A hand-operated contact.</summary>
public sealed record Switch
{
    public required bool IsClosed { get; init; }

    /// <summary>Of the closed contact; zero or more.</summary>
    public Resistance ContactResistance { get; init; }
}
