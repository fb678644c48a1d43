namespace Endurance.Simulation.Events;

/// <summary>Which signal a guard watches.</summary>
internal enum GuardSignal
{
    /// <summary>A component of the state vector.</summary>
    State,

    /// <summary>Amperes of a battery.</summary>
    BatteryCurrent,

    /// <summary>Volts of a bus.</summary>
    BusVoltage,

    /// <summary>Volts between a load's supply and its ground.</summary>
    LoadVoltage,

    /// <summary>Heat of a breaker or fuse.</summary>
    Heat,
}

/// <summary>A guard that something can come of in the present discrete state: due when the signal has passed the threshold.</summary>
/// <param name="Guard">What is watched.</param>
/// <param name="Signal">Which signal.</param>
/// <param name="Slot">Component of the state, battery or bus.</param>
/// <param name="Threshold">In the signal's unit.</param>
/// <param name="Rising">Due above the threshold; otherwise due below it.</param>
internal readonly record struct ArmedGuard(Guard Guard, GuardSignal Signal, int Slot, double Threshold, bool Rising)
{
    /// <summary>Not negative while nothing is due, negative once something is.</summary>
    public double ValueOf(double signal) => Rising ? Threshold - signal : signal - Threshold;
}
