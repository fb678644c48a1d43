using Endurance.Simulation;

namespace Endurance.Studies.Spread;

/// <summary>How a spread is drawn.</summary>
public sealed record SpreadOptions
{
    /// <summary>Number of scenarios drawn; 2 to 1,000,000.</summary>
    public int Samples { get; init; } = 1000;

    public int Seed { get; init; } = 1;

    /// <summary>Coarser than one run's: its error, near 0.01 min, is far below what any tolerance does.</summary>
    public SimulationOptions Simulation { get; init; } = new() { Tolerance = 1e-4, EndsWhenDecided = true };

    /// <summary>Called now and then with the number of scenarios done and of all, from any thread.</summary>
    public Action<int, int>? Progress { get; init; }
}
