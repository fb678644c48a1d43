namespace Endurance.Simulation;

/// <summary>What sort of thing happened; decides how a plot marks it.</summary>
public enum EventKind
{
    /// <summary>A timeline step did something to a part.</summary>
    Step,

    /// <summary>A load stopped being powered.</summary>
    LoadLost,

    /// <summary>A load is powered again.</summary>
    LoadBack,

    /// <summary>A bus fell below its cutoff.</summary>
    BusBelowCutoff,

    /// <summary>A bus rose above its cutoff again.</summary>
    BusBack,

    /// <summary>A battery gives nothing more.</summary>
    BatteryExhausted,

    /// <summary>An exhausted battery can give again.</summary>
    BatteryRevived,

    /// <summary>A battery's own protection opened or closed.</summary>
    BatteryProtection,

    /// <summary>The network had no operating point until a load was dropped.</summary>
    VoltageCollapse,

    /// <summary>The horizon, or nothing is left.</summary>
    End,
}
