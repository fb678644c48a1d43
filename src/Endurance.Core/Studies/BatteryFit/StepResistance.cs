namespace Endurance.Studies.BatteryFit;

/// <summary>Resistance from the voltage across sudden changes of current.</summary>
/// <param name="Ohms"><see langword="null"/>: no step can be used, or more of them lag than follow.</param>
/// <param name="Usable">Steps at which the voltage follows at once; the value rests on them.</param>
/// <param name="Lagging">Steps at which the voltage did not follow at once, or moved the wrong way: the logger reads it late.</param>
/// <param name="TooCoarse">Steps with rows too far apart, or too few rows around them, to tell.</param>
public sealed record StepResistance(FittedValue? Ohms, int Usable, int Lagging, int TooCoarse);
