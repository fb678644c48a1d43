using BenchmarkDotNet.Attributes;
using Endurance.Simulation;

namespace Endurance.Benchmarks;

/// <summary>The two larger reference networks to cutoff, at a tolerance that keeps the minute within 0.01 %.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class ReferenceNetworkBenchmarks
{
    /// <summary>Largest error of a state of charge in one step.</summary>
    [Params(1e-5, 1e-7)]
    public double Tolerance { get; set; }

    [Benchmark(Baseline = true)]
    public SimulationResult TwoBatteries() => BenchmarkNetwork.TwoBatteries.Run(Tolerance);

    [Benchmark]
    public SimulationResult MainAndEssential() => BenchmarkNetwork.MainAndEssential.Run(Tolerance);
}
