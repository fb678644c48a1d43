using System.Globalization;
using Endurance.Benchmarks.Hand;
using Endurance.Benchmarks.Scientific;
using Endurance.Benchmarks.Spice;

namespace Endurance.Benchmarks;

/// <summary>Prints Endurance beside other ways to the same minute: exactness, processor time, and their ratio at equal exactness.</summary>
internal static class Comparison
{
    /// <summary>Percent; no error below it is told from zero.</summary>
    private const double Floor = 1e-5;

    private static readonly double[] Tolerances = [1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8];

    public static void Print(TextWriter output)
    {
        output.WriteLine("Whole runs to the cutoff, microseconds of processor time (never the clock's): medians after a warm-up, other work may be running.");
        output.WriteLine("ngspice: user time over many runs in one process, start-up taken off, the fastest of 36 settings at each exactness; SciPy: in process.");
        output.WriteLine("The ratio is to the fastest setting of Endurance that is as exact or more so, here and at all its finer settings.");
        foreach (var network in new[] { BenchmarkNetwork.TwoBatteries, BenchmarkNetwork.MainAndEssential })
        {
            output.WriteLine();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{network.Name}, cutoff at {network.ExactMinutes:F3} min"));
            var endurance = ByEndurance(network);
            var rows = new List<Measurement>(endurance);
            rows.AddRange(network.IsTwoBatteries ? ByHand(tolerance => new TwoBatteriesByHand(tolerance)) : ByHand(tolerance => new MainAndEssentialByHand(tolerance)));
            AddWhereInstalled(output, rows, "ngspice", SpiceRuns.Of(network));
            AddWhereInstalled(output, rows, "SciPy", ScientificRuns.Of(network));
            PrintTable(output, network, endurance, rows);
        }
    }

    private static List<Measurement> ByEndurance(BenchmarkNetwork network) =>
    [
        .. Tolerances.Select(tolerance => new Measurement(
            "Endurance",
            string.Create(CultureInfo.InvariantCulture, $"tolerance {tolerance:0e+0}"),
            network.CutoffMinutes(network.Run(tolerance)),
            ProcessorTime.Microseconds(() => network.Run(tolerance).End.Seconds))),
    ];

    private static IEnumerable<Measurement> ByHand<TNetwork>(Func<double, TNetwork> start)
        where TNetwork : struct, IHandNetwork =>
        from isFifthOrder in new[] { false, true }
        from tolerance in Tolerances
        select new Measurement(
            "loop by hand",
            string.Create(CultureInfo.InvariantCulture, $"order {(isFifthOrder ? 5 : 3)}, tolerance {tolerance:0e+0}"),
            HandLoop.Minutes(start(tolerance), tolerance, isFifthOrder),
            ProcessorTime.Microseconds(() => HandLoop.Minutes(start(tolerance), tolerance, isFifthOrder)));

    private static void AddWhereInstalled(TextWriter output, List<Measurement> rows, string name, List<Measurement> measured)
    {
        if (measured.Count == 0)
            output.WriteLine($"{name}: not installed, left out");
        rows.AddRange(measured);
    }

    private static void PrintTable(TextWriter output, BenchmarkNetwork network, List<Measurement> endurance, List<Measurement> rows)
    {
        output.WriteLine("engine         setting                              error %      us/run   ratio");
        foreach (var row in rows)
        {
            var error = network.ErrorPercent(row.Minutes);
            var equal = endurance.Where((_, i) => endurance.Skip(i).All(finer => IsAsExact(network, finer, error))).MinBy(at => at.Microseconds);
            var ratio = equal is null ? "-" : string.Create(CultureInfo.InvariantCulture, $"{row.Microseconds / equal.Microseconds:F2}");
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row.Engine,-13}  {row.Setting,-32}  {error,10:F5}  {row.Microseconds,10:F1}  {ratio,6}"));
        }
    }

    private static bool IsAsExact(BenchmarkNetwork network, Measurement endurance, double error) =>
        Math.Abs(network.ErrorPercent(endurance.Minutes)) <= Math.Max(Math.Abs(error), Floor);
}
