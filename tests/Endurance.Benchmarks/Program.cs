using BenchmarkDotNet.Running;
using Endurance.Benchmarks;

switch (args)
{
    case ["effort"]:
        Effort.Print(Console.Out);
        break;
    case ["compare"]:
        Comparison.Print(Console.Out);
        break;
    case ["growth"]:
        Growth.Print(Console.Out);
        break;
    case ["memory"]:
        Memory.Print(Console.Out);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(ReferenceNetworkBenchmarks).Assembly).Run(args);
        break;
}
