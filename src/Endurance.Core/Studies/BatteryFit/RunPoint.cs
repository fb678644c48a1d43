namespace Endurance.Studies.BatteryFit;

/// <summary>Volts and amperes of a discharge at one instant.</summary>
/// <param name="Seconds">From the start of the discharge.</param>
/// <param name="Volts">At the terminals.</param>
/// <param name="Amperes">Positive when discharging.</param>
public readonly record struct RunPoint(double Seconds, double Volts, double Amperes);
