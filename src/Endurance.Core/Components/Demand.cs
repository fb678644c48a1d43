namespace Endurance.Components;

/// <summary>How a load draws: <see cref="ConstantCurrent"/>, <see cref="ConstantResistance"/> or <see cref="ConstantPower"/>.</summary>
public abstract record Demand;
