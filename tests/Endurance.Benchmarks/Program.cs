using BenchmarkDotNet.Running;
using Endurance.Benchmarks;

if (args is ["effort"])
{
    Effort.Print(Console.Out);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(ReferenceNetworkBenchmarks).Assembly).Run(args);
