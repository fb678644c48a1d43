namespace Endurance.Reports;

/// <summary>Starts a section.</summary>
/// <param name="Text">Plain text.</param>
public sealed record ReportHeading(string Text) : ReportBlock;
