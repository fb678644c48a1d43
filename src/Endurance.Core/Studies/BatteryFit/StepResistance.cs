namespace Endurance.Studies.BatteryFit;

/// <summary>Resistance from the voltage across sudden changes of current.</summary>
/// <param name="Ohms"><see langword="null"/>: no step can be used.</param>
/// <param name="Used">Steps that the value rests on.</param>
/// <param name="Lagging">Steps at which the voltage did not follow at once, or moved the wrong way: the logger reads it late.</param>
/// <param name="TooCoarse">Steps with rows too far apart, or too few rows around them, to tell.</param>
public sealed record StepResistance(FittedValue? Ohms, int Used, int Lagging, int TooCoarse);
