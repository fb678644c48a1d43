using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What became of a battery in a run.</summary>
public sealed record BatteryOutcome
{
    public required string Name { get; init; }

    /// <summary>State of charge at the start; 0 to 1.</summary>
    public required double ChargeStart { get; init; }

    /// <summary>State of charge at the end; 0 to 1.</summary>
    public required double ChargeEnd { get; init; }

    /// <summary>Integral of the discharge current alone.</summary>
    public required Charge Delivered { get; init; }

    /// <summary>Integral of the charge current alone, as a positive amount.</summary>
    public required Charge Received { get; init; }

    /// <summary>Energy given at the terminals while discharging.</summary>
    public required Energy DeliveredEnergy { get; init; }

    /// <summary>First exhaustion; <see langword="null"/> when not reached.</summary>
    public required Duration? TimeToExhaustion { get; init; }

    /// <summary>After all steps at zero have settled; positive when discharging.</summary>
    public required Current StartCurrent { get; init; }

    /// <summary>Largest discharge current of the run; zero or more.</summary>
    public required Current HighestCurrent { get; init; }

    /// <summary>Most negative current of the run: the largest charge current with its sign; zero or less.</summary>
    public Current LowestCurrent { get; init; }

    /// <summary>Largest charge current while no alternator runs, so that another battery gives it; zero or more.</summary>
    public Current CirculatingCurrent { get; init; }

    /// <summary>Smallest discharge current at which the lifetime law still stretches; <see langword="null"/>: it never discharged that fast.</summary>
    public Current? LowestDischarge { get; init; }
}
