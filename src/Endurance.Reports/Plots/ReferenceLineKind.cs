namespace Endurance.Reports.Plots;

/// <summary>What a straight line across a panel stands for.</summary>
public enum ReferenceLineKind
{
    /// <summary>Level: the voltage below which a bus counts as lost.</summary>
    Cutoff,

    /// <summary>Upright: the minutes required.</summary>
    Requirement,

    /// <summary>Level: the minutes required.</summary>
    LevelRequirement,

    /// <summary>Upright: the value in the scenario as it stands.</summary>
    Present,
}
