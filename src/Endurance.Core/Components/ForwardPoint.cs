using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>One measured or published point of a diode's forward curve.</summary>
/// <param name="Current">Above zero.</param>
/// <param name="Drop">Above zero.</param>
public readonly record struct ForwardPoint(Current Current, Voltage Drop);
