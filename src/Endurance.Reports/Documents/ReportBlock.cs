namespace Endurance.Reports;

/// <summary>A piece of a report: <see cref="ReportHeading"/>, <see cref="ReportParagraph"/>, <see cref="ReportList"/> or <see cref="ReportTable"/>.</summary>
public abstract record ReportBlock;
