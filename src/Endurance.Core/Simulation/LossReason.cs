namespace Endurance.Simulation;

/// <summary>Why a load was lost.</summary>
public enum LossReason
{
    /// <summary>Its own supply fell below its minimum.</summary>
    BelowMinimum,

    /// <summary>The sources cannot supply the power asked at any voltage.</summary>
    VoltageCollapse,

    /// <summary>No source is left that reaches its bus.</summary>
    BusDead,

    /// <summary>It was connected to a bus that nothing had fed.</summary>
    NeverFed,

    /// <summary>A battery's own protection opened.</summary>
    BatteryProtection,

    /// <summary>A feed that it depended on was opened, broken or tripped.</summary>
    FeedOpened,
}
