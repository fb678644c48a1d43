namespace Endurance.Reports;

/// <summary>A piece of a report: <see cref="ReportHeading"/>, <see cref="ReportParagraph"/>, <see cref="ReportList"/>, <see cref="ReportCode"/> or <see cref="ReportTable"/>.</summary>
public abstract record ReportBlock;
