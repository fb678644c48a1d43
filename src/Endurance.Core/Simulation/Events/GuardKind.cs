namespace Endurance.Simulation.Events;

/// <summary>What a guard watches; in the order in which guards are listed.</summary>
internal enum GuardKind
{
    BatteryKnotBelow,
    BatteryKnotAbove,
    BatteryExhausted,
    BatteryFull,

    /// <summary>The available well of a kinetic battery that was full has given to the bound one and has room again.</summary>
    BatteryBelowFull,
    BatteryRevived,

    /// <summary>The terminal voltage falls below what the battery's own protection allows.</summary>
    ProtectionVoltage,

    /// <summary>The discharge current rises above what the battery's own protection allows.</summary>
    ProtectionCurrent,

    /// <summary>The bus has risen enough for an open protection to close.</summary>
    ProtectionRecloses,

    /// <summary>The current leaves the range of the battery's present mode downwards.</summary>
    BatteryCurrentBelow,

    /// <summary>The current leaves the range of the battery's present mode upwards.</summary>
    BatteryCurrentAbove,

    /// <summary>A breaker or fuse has become hot enough to open.</summary>
    Overheated,

    /// <summary>An over-voltage relay takes an alternator off.</summary>
    OverVoltage,

    CoilPullsIn,
    CoilDropsOut,
    ChargerCutsIn,
    ChargerCutsOut,
    LoadBelowMinimum,

    /// <summary>A load without a minimum crosses the voltage it is judged at, either way.</summary>
    LoadJudgement,
    RestartReached,
    RestartLost,

    /// <summary>A bus crosses its cutoff, either way.</summary>
    BusCutoff,

    /// <summary>A bus crosses the threshold of a step that waits for it, either way.</summary>
    StepThreshold,

    /// <summary>A bus crosses the threshold of a low-voltage warning, either way.</summary>
    WarningThreshold,
}
