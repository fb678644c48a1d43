namespace Endurance.Studies.GroundTest;

/// <summary>What the meter is put to.</summary>
public enum ReadingKind
{
    /// <summary>A bus against airframe ground.</summary>
    BusVolts,

    /// <summary>A feed, positive from its <c>from</c> bus to its <c>to</c> bus.</summary>
    FeedAmperes,

    /// <summary>A battery, positive when discharging.</summary>
    BatteryAmperes,

    /// <summary>A load.</summary>
    LoadAmperes,
}
