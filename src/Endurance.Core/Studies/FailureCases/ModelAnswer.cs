using Endurance.Quantities;

namespace Endurance.Studies.FailureCases;

/// <summary>Endurance of a case by one capacity model.</summary>
/// <param name="Endurance"><see langword="null"/>: nothing is lost within the horizon.</param>
/// <param name="LimitedBy">What is lost first; <see langword="null"/> when nothing is.</param>
public sealed record ModelAnswer(Duration? Endurance, string? LimitedBy);
