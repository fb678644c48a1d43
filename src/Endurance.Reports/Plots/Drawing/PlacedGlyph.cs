namespace Endurance.Reports.Plots;

/// <summary>One shape of a font in a line of text.</summary>
/// <param name="Glyph">Its number in the font.</param>
/// <param name="X">Pixels from the start of the line.</param>
/// <param name="Y">Pixels below the baseline.</param>
internal readonly record struct PlacedGlyph(ushort Glyph, float X, float Y);
