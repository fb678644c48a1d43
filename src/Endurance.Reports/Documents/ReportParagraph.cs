namespace Endurance.Reports;

/// <summary>Running text.</summary>
/// <param name="Text">Plain text, no line ends.</param>
public sealed record ReportParagraph(string Text) : ReportBlock;
