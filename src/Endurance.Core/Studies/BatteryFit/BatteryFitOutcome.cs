namespace Endurance.Studies.BatteryFit;

/// <summary>A fit, or why there is none.</summary>
/// <param name="Result"><see langword="null"/> when refused.</param>
/// <param name="Refusal">A sentence without its full stop; <see langword="null"/> when there is a result.</param>
public sealed record BatteryFitOutcome(BatteryFitResult? Result, string? Refusal);
