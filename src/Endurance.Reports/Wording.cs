using Endurance.Components;
using Endurance.Findings;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;
using Endurance.Studies.Wiring;

namespace Endurance.Reports;

/// <summary>The fixed words that reports and programs use for enumerated outcomes.</summary>
internal static class Wording
{
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.None => "none",
        Verdict.Pass => "pass",
        Verdict.Fail => "fail",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Unknown verdict."),
    };

    public static string Of(LossReason reason) => reason switch
    {
        LossReason.BelowMinimum => "below minimum",
        LossReason.VoltageCollapse => "voltage collapse",
        LossReason.BusDead => "bus dead",
        LossReason.NeverFed => "never fed",
        LossReason.BatteryProtection => "battery protection",
        LossReason.FeedOpened => "feed opened",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Unknown reason."),
    };

    public static string Of(Severity severity) => severity switch
    {
        Severity.Information => "information",
        Severity.Caution => "caution",
        Severity.Warning => "warning",
        Severity.Error => "error",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "Unknown severity."),
    };

    public static string Of(Origin origin) => origin switch
    {
        Origin.Given => "given",
        Origin.Default => "default",
        Origin.Library => "library",
        Origin.Derived => "derived",
        Origin.Measured => "measured",
        _ => throw new ArgumentOutOfRangeException(nameof(origin), origin, "Unknown origin."),
    };

    public static string Of(WiringVerdict verdict) => verdict switch
    {
        WiringVerdict.Pass => "pass",
        WiringVerdict.Check => "check",
        WiringVerdict.Fail => "fail",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Unknown verdict."),
    };

    public static string Of(LoadType type) => type switch
    {
        LoadType.Lamp => "lamp",
        LoadType.Inductive => "inductive",
        LoadType.Resistive => "resistive",
        LoadType.Motor => "motor",
        _ => throw new ArgumentOutOfRangeException(nameof(type), type, "Unknown type of load."),
    };

    public static string Of(LoadBasis basis) => basis switch
    {
        LoadBasis.Manual => "manual",
        LoadBasis.Plate => "plate",
        LoadBasis.Measured => "measured",
        _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "Unknown basis."),
    };

    public static string Of(TestGroup group) => group switch
    {
        TestGroup.RestVoltage => "Batteries at rest",
        TestGroup.Conducts => "Each feed conducts",
        TestGroup.DiodeBlocks => "Each diode blocks",
        TestGroup.Opens => "Each contact opens",
        TestGroup.LoadAlone => "Each load alone",
        TestGroup.AllLoads => "All loads",
        TestGroup.SourceAlone => "Each battery alone",
        TestGroup.Warning => "Warnings",
        TestGroup.ShedList => "Shed list",
        TestGroup.Transfer => "Failure cases, step by step",
        TestGroup.EnduranceRun => "Timed run",
        TestGroup.EngineRunning => "Engine running",
        _ => throw new ArgumentOutOfRangeException(nameof(group), group, "Unknown group."),
    };

    public static string Of(ReadingVerdict verdict) => verdict switch
    {
        ReadingVerdict.InTolerance => "in tolerance",
        ReadingVerdict.OutOfTolerance => "out of tolerance",
        ReadingVerdict.NotMeasured => "not measured",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Unknown verdict."),
    };

    /// <summary>The name of a reading as every form of a test card uses it.</summary>
    public static string Of(ExpectedReading reading) => reading.Kind switch
    {
        ReadingKind.BusVolts => $"bus {reading.Part}",
        ReadingKind.FeedAmperes => $"feed {reading.Part}",
        ReadingKind.BatteryAmperes => $"battery {reading.Part}",
        ReadingKind.LoadAmperes => $"load {reading.Part}",
        _ => throw new ArgumentOutOfRangeException(nameof(reading), reading.Kind, "Unknown kind of reading."),
    };
}
