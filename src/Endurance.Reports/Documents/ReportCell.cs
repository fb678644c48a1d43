namespace Endurance.Reports;

/// <summary>Plain text of one cell, not escaped for any output.</summary>
/// <param name="Text">As a person reads it.</param>
/// <param name="Tone">Plain unless it carries a verdict.</param>
public readonly record struct ReportCell(string Text, CellTone Tone = CellTone.Plain)
{
    public static implicit operator ReportCell(string text) => new(text);
}
