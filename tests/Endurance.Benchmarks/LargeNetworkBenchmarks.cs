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

    [Benchmark]
    public SimulationResult AlternatorFails() => simulator.Run(LargeNetwork.AlternatorFails, new SimulationOptions());
}
