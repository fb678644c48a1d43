namespace Endurance.Simulation;

/// <summary>When balanced currents do not suffice and the last step must be small as well.</summary>
internal enum SmallStep
{
    Never,

    /// <summary>Where some bus is tied to the rest by almost nothing.</summary>
    WhereLoose,

    Always,
}
