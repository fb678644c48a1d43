using Endurance.Numerics;

namespace Endurance.Simulation;

/// <summary>A scenario's network as arrays of numbers; immutable and shared between runs and threads.</summary>
internal sealed class CompiledNetwork
{
    /// <summary>Buses first, then the terminals of loads with several inputs, then ground points.</summary>
    public required string[] NodeNames { get; init; }

    public required int BusCount { get; init; }

    /// <summary>Node of the first ground point; those from here on are always tied to the airframe.</summary>
    public required int FirstGround { get; init; }

    /// <summary>Siemens of each ground point to the airframe.</summary>
    public required double[] GroundSiemens { get; init; }

    /// <summary>Volts of each bus's cutoff; 0 where it has none.</summary>
    public required double[] Cutoffs { get; init; }

    public required CompiledBattery[] Batteries { get; init; }

    public required CompiledAlternator[] Alternators { get; init; }

    public required CompiledCharger[] Chargers { get; init; }

    /// <summary>Those of the scenario first, in its order, then the inputs of loads with several.</summary>
    public required CompiledFeed[] Feeds { get; init; }

    /// <summary>Number of <see cref="Feeds"/> that the scenario lists.</summary>
    public required int ListedFeeds { get; init; }

    public required CompiledLoad[] Loads { get; init; }

    public required CompiledCoil[] Coils { get; init; }

    /// <summary>One an alternator; <see langword="null"/> where its field is not modelled.</summary>
    public required CompiledLoad?[] Fields { get; init; }

    public required CompiledBreaker[] Breakers { get; init; }

    /// <summary>Volts by which a bus must exceed a threshold before it counts as above it again.</summary>
    public required double Hysteresis { get; init; }

    /// <summary>Kelvin.</summary>
    public required double Ambient { get; init; }

    public int NodeCount => NodeNames.Length;

    /// <summary>How the Jacobian of this network's node voltages is factored.</summary>
    public required Elimination Elimination { get; init; }
}
