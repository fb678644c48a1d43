namespace Endurance.Studies.Reconciliation;

/// <summary>What a pattern of readings may point at.</summary>
internal enum FaultKind
{
    BatteryMissing,
    BatteryCharge,
    ShortedCell,
    DiodeReversed,
    DiodeShorted,
    FeedOpen,
    ContactStuck,
    JointResistance,
    LoadOnWrongBus,
    LoadDrawsNothing,
    LoadDrawsOtherwise,
    MeterOff,
}
