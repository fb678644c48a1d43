using Endurance.Simulation;

namespace Endurance.Studies.Spread;

/// <summary>How a spread is drawn.</summary>
public sealed record SpreadOptions
{
    /// <summary>Number of scenarios drawn; 2 to 1,000,000.</summary>
    public int Samples { get; init; } = 1000;

    public int Seed { get; init; } = 1;

    public SimulationOptions Simulation { get; init; } = new() { Tolerance = 1e-6 };

    /// <summary>Called now and then with the number of scenarios done, from any thread.</summary>
    public Action<int>? Progress { get; init; }
}
