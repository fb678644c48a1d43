using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A resistor in a feed.</summary>
/// <param name="Resistance">Above zero.</param>
/// <param name="Rated">Power it stands; <see langword="null"/>: not given, not checked.</param>
public sealed record SeriesResistor(Resistance Resistance, Power? Rated);
