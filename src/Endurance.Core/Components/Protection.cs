using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A breaker or a fuse in a feed.</summary>
public sealed record Protection
{
    public required ProtectionKind Kind { get; init; }

    /// <summary>Above zero.</summary>
    public required Current Rating { get; init; }

    /// <summary>Cold resistance; zero or more.</summary>
    public Resistance Resistance { get; init; }

    public bool IsClosed { get; init; } = true;
}
