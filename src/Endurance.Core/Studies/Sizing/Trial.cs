using Endurance.Quantities;

namespace Endurance.Studies.Sizing;

/// <summary>One value tried.</summary>
/// <param name="Value">In the SI unit of what is varied.</param>
/// <param name="Passes">Every requirement is met in every case.</param>
/// <param name="Margin">Least endurance over what is required, as a ratio; positive infinity when nothing is lost within the horizon.</param>
/// <param name="Endurance">Least endurance over the cases; <see langword="null"/>: nothing is lost within the horizon.</param>
/// <param name="Case">The case that decides.</param>
/// <param name="LimitedBy">What is lost first there; <see langword="null"/> when nothing is.</param>
public sealed record Trial(double Value, bool Passes, double Margin, Duration? Endurance, string Case, string? LimitedBy);
