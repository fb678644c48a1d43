namespace Endurance.Findings;

/// <summary>A value the answer rests on that the scenario did not give in so many words.</summary>
/// <param name="Part">The part it belongs to, such as <c>ship_battery</c>; <c>scenario</c> for the whole.</param>
/// <param name="Text">What was assumed, with its unit.</param>
/// <param name="Origin">Where the value came from.</param>
/// <param name="Source">Publication, or <c>common practice, no source</c>, or <c>from memory, unverified</c>; <see langword="null"/> for a plain default.</param>
public sealed record Assumption(string Part, string Text, Origin Origin, string? Source);
