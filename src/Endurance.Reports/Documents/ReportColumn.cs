namespace Endurance.Reports;

/// <summary>Head of a column.</summary>
/// <param name="Heading">What the column holds.</param>
/// <param name="Unit">Symbol of the unit all its numbers share; <see langword="null"/> for words.</param>
public sealed record ReportColumn(string Heading, string? Unit = null)
{
    /// <summary>Heading with the unit in brackets.</summary>
    public string Label => Unit is null ? Heading : $"{Heading} ({Unit})";

    /// <summary>Numbers stand at the right edge.</summary>
    public bool IsNumber => Unit is not null;
}
