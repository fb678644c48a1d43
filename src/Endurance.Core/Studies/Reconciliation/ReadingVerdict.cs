namespace Endurance.Studies.Reconciliation;

/// <summary>How a reading stands to its prediction.</summary>
public enum ReadingVerdict
{
    InTolerance,

    OutOfTolerance,

    NotMeasured,
}
