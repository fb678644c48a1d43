using System.Globalization;
using System.Text.RegularExpressions;

namespace Endurance.Benchmarks.Spice;

/// <summary>Runs ngspice, where it is installed, many times over in one process a setting.</summary>
internal static partial class SpiceRuns
{
    private const string Engine = "ngspice";
    private const int FewRuns = 20;

    /// <summary>Microseconds of user time that a measurement lasts at least.</summary>
    private const double LongEnough = 250_000;

    /// <summary>The settings that no other beats in both exactness and time, the fastest first; empty where ngspice is not found.</summary>
    public static List<Measurement> Of(BenchmarkNetwork network)
    {
        if (Tool.Find(Engine) is not { } program)
            return [];
        var folder = Directory.CreateTempSubdirectory("endurance-compare-");
        try
        {
            var all = SpiceSetting.All.Select(setting => Measure(program, folder.FullName, network, setting)).OfType<Measurement>().OrderBy(m => m.Microseconds).ToList();
            var best = double.PositiveInfinity;
            return all.FindAll(m =>
            {
                var error = Math.Abs(network.ErrorPercent(m.Minutes));
                var isBetter = error < best;
                best = Math.Min(best, error);
                return isBetter;
            });
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Start-up cancels in the difference of a long and a short repetition; <see langword="null"/>: no cutoff was found.</summary>
    private static Measurement? Measure(string program, string folder, BenchmarkNetwork network, SpiceSetting setting)
    {
        var (minutes, few) = Repeat(program, folder, network, setting, FewRuns);
        if (double.IsNaN(minutes))
            return null;
        var (_, more) = Repeat(program, folder, network, setting, 11 * FewRuns);
        var guess = Math.Max((more - few) / (10 * FewRuns), 10);
        var runs = Math.Max(11 * FewRuns, (int)(LongEnough / guess));
        var (_, many) = Repeat(program, folder, network, setting, runs);
        return new Measurement(Engine, setting.ToString(), minutes, (many - few) / (runs - FewRuns));
    }

    /// <summary>Minute of the cutoff, and microseconds of user time of the whole process.</summary>
    private static (double Minutes, double Microseconds) Repeat(string program, string folder, BenchmarkNetwork network, SpiceSetting setting, int repeats)
    {
        var deck = Path.Combine(folder, "deck.cir");
        File.WriteAllText(deck, SpiceDeck.Of(network, setting, repeats));
        var output = Tool.Run("/bin/sh", folder, "-c", $"'{program}' -b deck.cir > out.txt 2>/dev/null; times");
        var cutoff = Cutoff().Match(File.ReadAllText(Path.Combine(folder, "out.txt")));
        var user = UserTime().Matches(output);
        var minutes = cutoff.Success ? double.Parse(cutoff.Groups["seconds"].Value, CultureInfo.InvariantCulture) / 60 : double.NaN;
        var seconds = (60 * double.Parse(user[1].Groups["minutes"].Value, CultureInfo.InvariantCulture)) + double.Parse(user[1].Groups["seconds"].Value, CultureInfo.InvariantCulture);
        return (minutes, seconds * 1e6);
    }

    [GeneratedRegex(@"^(?<minutes>\d+)m(?<seconds>[\d.]+)s ", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex UserTime();

    [GeneratedRegex(@"cutoff\s*=\s*(?<seconds>[0-9.e+-]+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Cutoff();
}
