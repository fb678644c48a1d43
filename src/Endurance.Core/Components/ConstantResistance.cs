using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>v/R.</summary>
/// <param name="Resistance">Above zero.</param>
public sealed record ConstantResistance(Resistance Resistance) : Demand;
