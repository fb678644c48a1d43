using System.Globalization;

namespace Endurance.Benchmarks;

/// <summary>Prints what the process holds after many runs: a leak shows as growth.</summary>
internal static class Memory
{
    private const int Runs = 100_000;
    private const int Every = 20_000;
    private const double Tolerance = 1e-4;

    public static void Print(TextWriter output)
    {
        output.WriteLine("runs     managed heap (kB)  working set (MB)");
        for (var done = 0; done <= Runs; done++)
        {
            if (done % Every == 0)
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{done,7}  {GC.GetTotalMemory(forceFullCollection: true) / 1024.0,17:F0}  {Environment.WorkingSet / 1048576.0,16:F1}"));
            BenchmarkNetwork.TwoBatteries.Run(Tolerance);
        }
    }
}
