using BenchmarkDotNet.Attributes;
using Endurance.Simulation;
using Endurance.Tests.Reference;

namespace Endurance.Benchmarks;

/// <summary>A whole case of a network of 8 buses, 20 feeds and 40 loads, from the failure to the last battery.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class LargeNetworkBenchmarks
{
    private readonly Simulator simulator = new(LargeNetwork.Scenario);

    /// <summary>Largest error of a state of charge in one step: that of a spread, and the default.</summary>
    [Params(1e-5, 1e-8)]
    public double Tolerance { get; set; }

    [Benchmark]
    public SimulationResult AlternatorFails() => simulator.Run(LargeNetwork.AlternatorFails, new SimulationOptions { Tolerance = Tolerance });
}
