namespace Endurance.Reports.Plots;

/// <summary>A row of two bars that start together and end apart: what a low and a high value do.</summary>
/// <param name="Row">From the top, counting from zero.</param>
/// <param name="Label">At the left edge of the picture.</param>
/// <param name="Base">Where both bars start, on the X axis.</param>
/// <param name="Low">Where the bar of the low value ends.</param>
/// <param name="High">Where the bar of the high value ends.</param>
/// <param name="LowText">Beside the end of the bar of the low value.</param>
/// <param name="HighText">Beside the end of the bar of the high value.</param>
public sealed record PlotSpan(int Row, string Label, double Base, double Low, double High, string LowText, string HighText);
