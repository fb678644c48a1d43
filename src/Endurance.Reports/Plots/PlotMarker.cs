namespace Endurance.Reports.Plots;

/// <summary>A marked point with a word beside it.</summary>
/// <param name="At">Where.</param>
/// <param name="Text">The word.</param>
/// <param name="Style">As of the series it belongs to.</param>
public sealed record PlotMarker(PlotPoint At, string Text, int Style);
