namespace Endurance.Reports.Plots;

/// <summary>How a bar stands to what is required of it.</summary>
public enum BarKind
{
    NothingRequired,

    Met,

    Missed,
}
