using Endurance.Quantities;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.LayoutComparison;

/// <summary>One failure case of one layout.</summary>
public sealed record LayoutCase
{
    public required CaseResult Result { get; init; }

    /// <summary>At the essential bus, after all steps at zero have settled; <see langword="null"/> without buses.</summary>
    public required Voltage? StartVoltage { get; init; }

    /// <summary>At the essential bus one minute before the first loss, or at the end of the run when nothing is lost.</summary>
    public required Voltage? EndVoltage { get; init; }

    /// <summary>Heat of the hottest-running diode of the feeds at its worst instant; <see langword="null"/> without diodes.</summary>
    public required Power? HighestDiodePower { get; init; }

    /// <summary><see langword="null"/> where no diode has a heat path: its temperature is not known then.</summary>
    public required Temperature? HighestJunction { get; init; }
}
