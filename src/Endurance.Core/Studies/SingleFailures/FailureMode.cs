namespace Endurance.Studies.SingleFailures;

/// <summary>How a part can fail.</summary>
public enum FailureMode
{
    BatteryOpen,
    ShortedCell,
    BatteryFlat,
    DiodeOpen,
    DiodeShort,
    StuckOpen,
    StuckClosed,
    ProtectionOpen,
    WireOpen,
    BusShorted,
    SourceOff,
    OverVoltage,
    ChargerOff,
    WarningSilent,
    StepNotDone,
}
