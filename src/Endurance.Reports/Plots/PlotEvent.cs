namespace Endurance.Reports.Plots;

/// <summary>One or more things that happened so close together that one numbered mark stands for them.</summary>
/// <param name="Number">From one, in order of time.</param>
/// <param name="Minutes">Of the first of them.</param>
/// <param name="Text">What happened, with minutes.</param>
public sealed record PlotEvent(int Number, double Minutes, string Text);
