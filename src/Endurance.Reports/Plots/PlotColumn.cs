namespace Endurance.Reports.Plots;

/// <summary>An upright bar of a histogram, from zero.</summary>
/// <param name="From">Left edge on the X axis.</param>
/// <param name="To">Right edge; above <paramref name="From"/>.</param>
/// <param name="Height">In the units of the Y axis; zero or more.</param>
public sealed record PlotColumn(double From, double To, double Height);
