namespace Endurance.Reports.Plots;

/// <summary>A straight line across a panel.</summary>
/// <param name="Kind">Level or upright, and what for.</param>
/// <param name="Value">In the units of the axis it crosses.</param>
/// <param name="Text">For the key, with its unit.</param>
public sealed record ReferenceLine(ReferenceLineKind Kind, double Value, string Text);
