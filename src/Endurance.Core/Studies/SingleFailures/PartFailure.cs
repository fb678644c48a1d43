using Endurance.Scenarios;

namespace Endurance.Studies.SingleFailures;

/// <summary>One part that fails in one way.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Mode">How it fails.</param>
/// <param name="Apply">The scenario and the case with the failure in them from time zero on.</param>
/// <param name="Case">The only case it can happen in; <see langword="null"/>: any.</param>
public sealed record PartFailure(
    string Part, FailureMode Mode, Func<Scenario, FailureCase, (Scenario Scenario, FailureCase Case)> Apply, string? Case = null)
{
    /// <summary>The mode in a word or two, as every report uses it.</summary>
    public string Word => WordOf(Mode);

    /// <summary>A mode in a word or two.</summary>
    public static string WordOf(FailureMode mode) => mode switch
    {
        FailureMode.BatteryOpen => "open",
        FailureMode.ShortedCell => "shorted cell",
        FailureMode.BatteryFlat => "flat",
        FailureMode.DiodeOpen => "diode open",
        FailureMode.DiodeShort => "short",
        FailureMode.StuckOpen => "stuck open",
        FailureMode.StuckClosed => "stuck closed",
        FailureMode.ProtectionOpen => "protection open",
        FailureMode.WireOpen => "wire open",
        FailureMode.BusShorted => "short to ground",
        FailureMode.SourceOff => "off",
        FailureMode.OverVoltage => "over-voltage",
        FailureMode.ChargerOff => "off",
        FailureMode.WarningSilent => "silent",
        _ => "not done",
    };
}
