using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What became of a bus in a run. Times are <see langword="null"/> when not reached within the horizon.</summary>
public sealed record BusOutcome
{
    public required string Name { get; init; }

    public required Voltage? Cutoff { get; init; }

    /// <summary>First crossing of the cutoff.</summary>
    public required Duration? TimeToCutoff { get; init; }

    /// <summary>Last crossing after which the bus stayed below.</summary>
    public required Duration? TimeToCutoffForGood { get; init; }

    /// <summary>After all steps at zero have settled.</summary>
    public required Voltage StartVoltage { get; init; }

    public required Voltage LowestVoltage { get; init; }
}
