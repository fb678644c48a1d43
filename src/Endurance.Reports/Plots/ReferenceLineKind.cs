namespace Endurance.Reports.Plots;

/// <summary>What a straight line across a panel stands for.</summary>
public enum ReferenceLineKind
{
    /// <summary>Level: the voltage below which a bus counts as lost.</summary>
    Cutoff,

    /// <summary>Upright: the minutes required.</summary>
    Requirement,
}
