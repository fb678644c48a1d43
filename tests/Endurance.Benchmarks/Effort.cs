using System.Globalization;

namespace Endurance.Benchmarks;

/// <summary>Prints how hard the reference networks are worked, how exact the answer is, and what it costs.</summary>
internal static class Effort
{
    public static void Print(TextWriter output)
    {
        output.WriteLine("network             tolerance  error %    steps  rejected  solves  iterations  us/run  bytes/run");
        foreach (var (name, network) in new[] { ("two batteries", BenchmarkNetwork.TwoBatteries), ("main and essential", BenchmarkNetwork.MainAndEssential) })
        {
            foreach (var tolerance in new[] { 1e-8, 1e-7, 1e-6, 1e-5, 1e-4 })
            {
                var result = network.Run(tolerance);
                var s = result.Statistics;
                output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{name,-18}  {tolerance,9:0e+0}  {network.ErrorPercent(result),8:F5}  {s.AcceptedSteps,5}  {s.RejectedSteps,8}  {s.NetworkSolves,6}  {s.NewtonIterations,10}  {ProcessorTime.Microseconds(() => network.Run(tolerance).End.Seconds),6:F1}  {BytesOf(network, tolerance),9}"));
            }
        }
    }

    private static long BytesOf(BenchmarkNetwork network, double tolerance)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        network.Run(tolerance);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
