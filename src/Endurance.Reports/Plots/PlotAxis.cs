namespace Endurance.Reports.Plots;

/// <summary>A linear or logarithmic axis.</summary>
/// <param name="Label">Quantity.</param>
/// <param name="Unit">Symbol.</param>
/// <param name="Low">Left or lower end.</param>
/// <param name="High">Above <paramref name="Low"/>.</param>
/// <param name="Step">Between labelled ticks; above zero.</param>
public sealed record PlotAxis(string Label, string Unit, double Low, double High, double Step)
{
    /// <summary>Ends and points are decimal logarithms of what the labels show; ticks stand at 1, 2, 5 times powers of ten.</summary>
    public bool IsLogarithmic { get; init; }
}
