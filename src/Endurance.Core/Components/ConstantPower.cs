using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>P/v: a switching supply.</summary>
/// <param name="Power">Above zero.</param>
public sealed record ConstantPower(Power Power) : Demand;
