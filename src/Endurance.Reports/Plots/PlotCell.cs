namespace Endurance.Reports.Plots;

/// <summary>One cell of a grid.</summary>
/// <param name="Text">In the cell.</param>
/// <param name="Kind">Picks colour and hatching together.</param>
public sealed record PlotCell(string Text, BarKind Kind);
