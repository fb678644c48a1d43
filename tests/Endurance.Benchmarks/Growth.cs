using System.Globalization;
using Endurance.Simulation;

namespace Endurance.Benchmarks;

/// <summary>Prints how the processor time of a case grows with its buses, loads, events and minutes.</summary>
internal static class Growth
{
    private static readonly GrowthNetwork Usual = new(10, 20, 4, 60);

    public static void Print(TextWriter output)
    {
        output.WriteLine("Processor time of one case at the default tolerance; the exponent is that of the growth from the row above.");
        Print(output, "buses", [2, 5, 10, 20, 50, 100, 200], n => Usual with { Buses = n });
        Print(output, "loads", [5, 10, 20, 50, 100, 200, 500], n => Usual with { Loads = n });
        Print(output, "events", [0, 5, 10, 20, 50, 100, 200], n => Usual with { Events = n });
        Print(output, "minutes", [15, 30, 60, 120, 240], n => Usual with { Minutes = n });
    }

    private static void Print(TextWriter output, string name, int[] sizes, Func<int, GrowthNetwork> network)
    {
        output.WriteLine();
        output.WriteLine($"{name,8}       us/case  exponent  solves  Newton iterations  us/iteration");
        var (lastSize, last) = (0, double.NaN);
        foreach (var size in sizes)
        {
            var simulator = new Simulator(network(size).Scenario);
            var failure = network(size).Case;
            var options = new SimulationOptions();
            var work = simulator.Run(failure, options).Statistics;
            var microseconds = ProcessorTime.Microseconds(() => simulator.Run(failure, options).End.Seconds);
            var exponent = lastSize == 0 ? "-" : string.Create(CultureInfo.InvariantCulture, $"{Math.Log(microseconds / last) / Math.Log((double)size / lastSize):F2}");
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{size,8}  {microseconds,12:F0}  {exponent,8}  {work.NetworkSolves,6}  {work.NewtonIterations,17}  {microseconds / work.NewtonIterations,12:F2}"));
            (lastSize, last) = (size, microseconds);
        }
    }
}
