namespace Endurance.Studies.Wiring;

/// <summary>Where a branch's current came from.</summary>
public enum CurrentSource
{
    /// <summary>The worst of all failure cases and of the aircraft as drawn.</summary>
    Simulated,

    /// <summary>The load's own figure at the nominal voltage, because no case connects it.</summary>
    Nominal,
}
