namespace Endurance.Studies.BatteryFit;

/// <summary>One row of a battery log. A signal the row does not hold is <see langword="null"/>; every number is finite.</summary>
/// <param name="Seconds">From the first row of the log.</param>
/// <param name="Volts">At the terminals.</param>
/// <param name="Amperes">Either sign; which one is discharge is found from the voltage.</param>
/// <param name="Celsius">Of the battery.</param>
public readonly record struct LogSample(double Seconds, double? Volts, double? Amperes, double? Celsius);
