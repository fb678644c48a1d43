namespace Endurance.Reports.Plots;

/// <summary>A point in the units of the axes.</summary>
public readonly record struct PlotPoint(double X, double Y);
