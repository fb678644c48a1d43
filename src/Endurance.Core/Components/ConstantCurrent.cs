using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>The same current at any voltage above the load's minimum; without a minimum it falls linearly to zero below 1 V.</summary>
/// <param name="Current">Above zero.</param>
public sealed record ConstantCurrent(Current Current) : Demand;
