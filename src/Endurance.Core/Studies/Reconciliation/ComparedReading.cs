using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>A reading beside its prediction.</summary>
/// <param name="Point">Where it was taken.</param>
/// <param name="Expected">What the scenario predicts.</param>
/// <param name="Measured">In the unit of the prediction; <see langword="null"/>: not measured.</param>
/// <param name="Date">Day of the measurement; <see langword="null"/>: not said.</param>
public sealed record ComparedReading(TestPoint Point, ExpectedReading Expected, double? Measured, DateOnly? Date)
{
    /// <summary>Measured less predicted.</summary>
    public double? Deviation => Measured - Expected.Predicted;

    public ReadingVerdict Verdict => Deviation is not { } deviation ? ReadingVerdict.NotMeasured
        : Math.Abs(deviation) <= Expected.Tolerance ? ReadingVerdict.InTolerance : ReadingVerdict.OutOfTolerance;

    /// <summary>The number on the card, to the last of its two decimals.</summary>
    public bool IsAsPrinted => Measured is { } measured && Math.Abs(measured - Math.Round(Expected.Predicted, 2, MidpointRounding.AwayFromZero)) < 1e-9;
}
