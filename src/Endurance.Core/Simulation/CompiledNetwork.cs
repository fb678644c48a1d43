namespace Endurance.Simulation;

/// <summary>A scenario's network as arrays of numbers; immutable and shared between runs and threads.</summary>
internal sealed class CompiledNetwork
{
    public required string[] BusNames { get; init; }

    /// <summary>Volts of each bus's cutoff; 0 where it has none.</summary>
    public required double[] Cutoffs { get; init; }

    public required CompiledBattery[] Batteries { get; init; }

    public required CompiledAlternator[] Alternators { get; init; }

    public required CompiledFeed[] Feeds { get; init; }

    public required CompiledLoad[] Loads { get; init; }

    /// <summary>Contactor coils; <see cref="CoilFeeds"/> tells whose.</summary>
    public required CompiledLoad[] Coils { get; init; }

    /// <summary>Feed of each coil.</summary>
    public required int[] CoilFeeds { get; init; }

    /// <summary>Volts by which a bus must exceed a threshold before it counts as above it again.</summary>
    public required double Hysteresis { get; init; }

    /// <summary>Kelvin.</summary>
    public required double Ambient { get; init; }

    public int BusCount => BusNames.Length;
}
