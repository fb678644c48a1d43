using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A transistor switched to behave like a diode: regulates a small forward drop, then acts as its on-resistance; blocks reverse.</summary>
/// <remarks>No current below 0.95 of the regulated drop, slope 20/Ron up to it, v/Ron above; with no regulated drop v/Ron for v > 0.</remarks>
public sealed record IdealDiodeController : Diode
{
    /// <summary>Above zero.</summary>
    public required Resistance OnResistance { get; init; }

    /// <summary>Zero or more.</summary>
    public required Voltage RegulatedDrop { get; init; }
}
