namespace Endurance.Reports;

/// <summary>How a cell may be coloured; the text says the same without colour.</summary>
public enum CellTone
{
    Plain,

    /// <summary>A requirement met.</summary>
    Good,

    /// <summary>A requirement missed, or a warning.</summary>
    Bad,
}
