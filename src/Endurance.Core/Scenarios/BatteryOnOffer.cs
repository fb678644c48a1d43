using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>A battery that could be bought.</summary>
/// <param name="Name">As listed.</param>
/// <param name="Capacity">At <paramref name="Rate"/>; above zero.</param>
/// <param name="Rate">Hour rate of the capacity; above zero.</param>
/// <param name="Kilograms">Mass; <see langword="null"/>: not said.</param>
public sealed record BatteryOnOffer(string Name, Charge Capacity, Duration Rate, double? Kilograms);
