using System.Collections.Immutable;

namespace Endurance.Reports.Plots;

/// <summary>A line through points. Steps are drawn as steps, since a jump has two points at one instant.</summary>
/// <param name="Name">For the key.</param>
/// <param name="Style">Zero or more; picks colour, dashes and marker together.</param>
/// <param name="Points">In order of X.</param>
public sealed record PlotSeries(string Name, int Style, ImmutableArray<PlotPoint> Points);
