using Endurance.Simulation;

namespace Endurance.Studies.SingleFailures;

/// <summary>How failures are tried.</summary>
public sealed record SingleFailureOptions
{
    /// <summary>Every two parts at once, instead of every one.</summary>
    public bool Pairs { get; init; }

    public SimulationOptions Simulation { get; init; } = new() { Tolerance = 1e-6 };

    /// <summary>Called now and then with the number of rows done and of all rows, from any thread.</summary>
    public Action<int, int>? Progress { get; init; }
}
