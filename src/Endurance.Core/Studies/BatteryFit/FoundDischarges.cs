using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>The discharges of a log.</summary>
public sealed record FoundDischarges
{
    /// <summary>In order of time; empty when there is none.</summary>
    public required ImmutableArray<DischargeRun> Runs { get; init; }

    /// <summary>Whether the log writes discharge as positive amperes.</summary>
    public required bool IsDischargePositive { get; init; }

    /// <summary>Currents up to this count as rest.</summary>
    public required Current Threshold { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }
}
