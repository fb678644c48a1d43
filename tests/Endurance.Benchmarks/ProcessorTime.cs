namespace Endurance.Benchmarks;

/// <summary>Times a function by the processor time of this process, which other work on the machine does not stretch as it does the clock's.</summary>
internal static class ProcessorTime
{
    private const int Batches = 9;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Batch = TimeSpan.FromMilliseconds(60);

    /// <summary>Median over batches of many runs, microseconds a run, after a warm-up.</summary>
    public static double Microseconds(Func<double> run)
    {
        var started = Environment.CpuUsage.TotalTime;
        var sink = 0.0;
        var runs = 0;
        while (Environment.CpuUsage.TotalTime - started < WarmUp)
        {
            sink += run();
            runs++;
        }

        var size = Math.Max(1, (int)(runs * (Batch / WarmUp)));
        var times = new double[Batches];
        for (var i = 0; i < Batches; i++)
        {
            var from = Environment.CpuUsage.TotalTime;
            for (var k = 0; k < size; k++)
                sink += run();
            times[i] = (Environment.CpuUsage.TotalTime - from).TotalMicroseconds / size;
        }

        if (double.IsNaN(sink))
            throw new InvalidOperationException("A run gave no number.");
        Array.Sort(times);
        return times[Batches / 2];
    }
}
