using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>One run judged as a capacity test: time to the end voltage over the time the label promises at that current.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="EndVoltage">Where the test was counted to.</param>
/// <param name="IsEndReached">Whether the run went down to the voltage asked for; otherwise <paramref name="EndVoltage"/> is the last it reached, and the percentage is a lower bound.</param>
/// <param name="Time">To the end voltage.</param>
/// <param name="Fraction">Of the rating; above zero.</param>
/// <param name="IsPassed">Whether the fraction is at least what was asked for.</param>
public sealed record CapacityTest(int Run, Voltage EndVoltage, bool IsEndReached, Duration Time, double Fraction, bool IsPassed);
