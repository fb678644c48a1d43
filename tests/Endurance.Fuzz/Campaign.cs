using System.Diagnostics;

namespace Endurance.Fuzz;

/// <summary>Many seeds, one after another, with what became of them.</summary>
internal static class Campaign
{
    private const int Shown = 60;

    /// <summary>Seconds after which a seed is named as slow; most take some milliseconds.</summary>
    private const double SlowAfter = 20;

    /// <returns>0 when everything held, else 1.</returns>
    public static int Run(string name, Func<int, Verdict> check, int count, int first, TextWriter output)
    {
        var verdicts = new int[Enum.GetValues<Verdict>().Length];
        var failures = 0;
        for (var seed = first; seed < first + count; seed++)
        {
            var started = Stopwatch.GetTimestamp();
            try
            {
                var verdict = check(seed);
                if (verdict == Verdict.Unsolved && verdicts[(int)verdict] < Shown)
                    output.WriteLine($"seed {seed}: not solved");
                verdicts[(int)verdict]++;
            }
            catch (Exception fault)
            {
                failures++;
                if (failures <= Shown)
                    output.WriteLine($"seed {seed}: {fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")}");
            }

            var took = Stopwatch.GetElapsedTime(started).TotalSeconds;
            if (took > SlowAfter)
                output.WriteLine($"seed {seed}: took {took:F0} s");
        }

        output.WriteLine($"{name}: {count} seeds from {first}: {verdicts[(int)Verdict.Held]} held, {verdicts[(int)Verdict.Refused]} refused, {verdicts[(int)Verdict.Unsolved]} unsolved, {verdicts[(int)Verdict.Chattered]} chattered, {failures} failed");
        return failures == 0 ? 0 : 1;
    }
}
