namespace Endurance.Components;

/// <summary>How a battery's capacity depends on the history of its current.</summary>
public enum CapacityModel
{
    /// <summary>A fraction of life is used up at each current as by a constant discharge at that current; no recovery.</summary>
    Peukert,

    /// <summary>Two wells, one available and one bound, that level out through a valve: recovery in rest.</summary>
    Kinetic,
}
