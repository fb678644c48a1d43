namespace Endurance.Reports.Plots;

/// <summary>A linear axis.</summary>
/// <param name="Label">Quantity.</param>
/// <param name="Unit">Symbol.</param>
/// <param name="Low">Left or lower end.</param>
/// <param name="High">Above <paramref name="Low"/>.</param>
/// <param name="Step">Between labelled ticks; above zero.</param>
public sealed record PlotAxis(string Label, string Unit, double Low, double High, double Step);
