namespace Endurance.Reports;

/// <summary>Lines to be copied as they stand.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="Language">For Markdown, such as <c>yaml</c>.</param>
/// <param name="Text">Lines that end with a line feed; made by the program, nothing invisible in it.</param>
public sealed record ReportCode(string Title, string Language, string Text) : ReportBlock;
