using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>When a run reached a voltage, and when the fitted battery would.</summary>
public sealed record EndTime
{
    public required Voltage Voltage { get; init; }

    /// <summary><see langword="null"/>: the run did not go down so far, or was below from the start.</summary>
    public required Duration? Measured { get; init; }

    /// <summary>By the simulator, from full at the mean current of the run, with the exponent as measured.</summary>
    public required Duration Predicted { get; init; }

    /// <summary>The same with the battery as written for a scenario; differs where the measured exponent is below 1.</summary>
    public required Duration PredictedAsWritten { get; init; }

    /// <summary>Predicted over measured, less one.</summary>
    public double? Error => Measured is { } measured ? (Predicted / measured) - 1 : null;

    public double? ErrorAsWritten => Measured is { } measured ? (PredictedAsWritten / measured) - 1 : null;
}
