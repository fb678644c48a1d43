using BenchmarkDotNet.Running;
using Endurance.Benchmarks;

switch (args)
{
    case ["effort"]:
        Effort.Print(Console.Out);
        break;
    case ["prof"]:
        var sink = 0.0;
        for (var i = 0; i < 100000; i++)
            sink += BenchmarkNetwork.TwoBatteries.Run(1e-5).End.Seconds;
        Console.WriteLine(sink);
        break;
    case ["short"]:
        var brief = new Endurance.Simulation.Simulator(Endurance.Tests.Reference.ReferenceNetworks.TwoBatteriesTwoDiodes with { Horizon = Endurance.Quantities.Duration.FromSeconds(1) });
        Console.WriteLine(ProcessorTime.Microseconds(() => brief.Run(Endurance.Tests.Parts.Case(), new Endurance.Simulation.SimulationOptions { Tolerance = 1e-5 }).End.Seconds));
        Console.WriteLine(ProcessorTime.Microseconds(() => BenchmarkNetwork.TwoBatteries.Run(1e-5).End.Seconds));
        Console.WriteLine(ProcessorTime.Microseconds(() => Endurance.Benchmarks.Hand.HandLoop.Minutes(new Endurance.Benchmarks.Hand.TwoBatteriesByHand(1e-5), 1e-5, false)));
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
