namespace Endurance.Reports.Plots;

/// <summary>A heading above the bars that follow it.</summary>
/// <param name="Row">Row it takes.</param>
/// <param name="Text">Name of the group.</param>
public sealed record BarGroup(int Row, string Text);
