using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A light or message that comes on when a bus has been low for a while, and stays on.</summary>
public sealed record LowVoltageWarning
{
    public required string Name { get; init; }

    /// <summary>The bus it senses.</summary>
    public required string Senses { get; init; }

    /// <summary>Above zero.</summary>
    public required Voltage Below { get; init; }

    /// <summary>Zero or more.</summary>
    public Duration For { get; init; }
}
