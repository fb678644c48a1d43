using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>One number off a filled card.</summary>
/// <param name="Point">Number of the test point.</param>
/// <param name="Kind">What was measured.</param>
/// <param name="Part">Of which part.</param>
/// <param name="Value">Volts or amperes, with the sign of the prediction's direction.</param>
/// <param name="Date">Day of the measurement; <see langword="null"/>: not said.</param>
public sealed record MeasuredReading(int Point, ReadingKind Kind, string Part, double Value, DateOnly? Date = null);
