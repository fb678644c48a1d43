namespace Endurance.Reports.Plots;

/// <summary>A horizontal bar from zero.</summary>
/// <param name="Row">From the top, counting from zero; a row may be left free.</param>
/// <param name="Label">At the left end.</param>
/// <param name="Length">In the units of the X axis; zero or more.</param>
/// <param name="Text">At the right end.</param>
/// <param name="Kind">Picks colour and hatching together.</param>
/// <param name="GoesOn">The true length is beyond what was simulated: drawn with an arrow head.</param>
/// <param name="Required">Drawn as a tick across the bar; <see langword="null"/>: none.</param>
public sealed record PlotBar(int Row, string Label, double Length, string Text, BarKind Kind, bool GoesOn, double? Required);
