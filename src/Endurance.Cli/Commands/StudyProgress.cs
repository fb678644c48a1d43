namespace Endurance.Cli.Commands;

/// <summary>How far a study has come, on one line that is overwritten and taken away at the end.</summary>
internal sealed class StudyProgress(TextWriter? terminal) : IDisposable
{
    private const int LineLength = 30;

    private readonly Lock gate = new();
    private int shown = -1;

    /// <summary>May be called from any thread; writes when the percentage changes.</summary>
    public void Report(int done, int all)
    {
        var percent = (int)(100L * done / Math.Max(1, all));
        if (terminal is null || percent <= Volatile.Read(ref shown))
            return;
        lock (gate)
        {
            if (percent <= shown)
                return;
            shown = percent;
            terminal.Write($"\r{percent} % of {all} ");
        }
    }

    public void Dispose()
    {
        if (shown >= 0)
            terminal?.Write("\r" + new string(' ', LineLength) + "\r");
    }
}
