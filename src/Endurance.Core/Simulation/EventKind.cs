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

    /// <summary>A breaker, fuse, relay or contactor moved, or a charger started or stopped, of itself.</summary>
    Tripped,

    /// <summary>A low-voltage warning came on.</summary>
    Warning,

    /// <summary>The network had no operating point until a load was dropped.</summary>
    VoltageCollapse,

    /// <summary>The horizon, or nothing is left.</summary>
    End,
}
