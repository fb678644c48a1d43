using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>Everything one run of one failure case tells. Parts stand in the order of the scenario.</summary>
public sealed record SimulationResult
{
    public required ImmutableArray<BusOutcome> Buses { get; init; }

    public required ImmutableArray<LoadOutcome> Loads { get; init; }

    public required ImmutableArray<BatteryOutcome> Batteries { get; init; }

    public required ImmutableArray<FeedOutcome> Feeds { get; init; }

    public ImmutableArray<AlternatorOutcome> Alternators { get; init; } = [];

    public ImmutableArray<ChargerOutcome> Chargers { get; init; } = [];

    /// <summary>Breakers, fuses and fusible links whose tripping is simulated: those of feeds, then those of loads.</summary>
    public ImmutableArray<ProtectionOutcome> Protections { get; init; } = [];

    public ImmutableArray<WarningOutcome> Warnings { get; init; } = [];

    /// <summary>In order of time, then of occurrence.</summary>
    public required ImmutableArray<TimedEvent> Events { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>The first step after zero that opens, closes, sheds, connects, starts, restores or selects; <see langword="null"/> when none was carried out.</summary>
    public required Duration? Recognition { get; init; }

    /// <summary>End of the run: the horizon, or the instant at which nothing was left.</summary>
    public required Duration End { get; init; }

    /// <summary>Why the run broke off at <see cref="End"/>, with everything up to there; <see langword="null"/> when it went on to its end.</summary>
    public BreakOff? BreakOff { get; init; }

    /// <summary>The network was solved at zero; <see langword="false"/> only with a <see cref="BreakOff"/>, and then no volts and amperes are known.</summary>
    public bool HasBegun { get; init; } = true;

    /// <summary>Energy out of the sources less energy into loads and losses, over the energy out of the sources.</summary>
    public required double EnergyResidual { get; init; }

    public required SimulationStatistics Statistics { get; init; }

    /// <summary><see langword="null"/> when no sample interval was asked for.</summary>
    public required Trace? Trace { get; init; }
}
