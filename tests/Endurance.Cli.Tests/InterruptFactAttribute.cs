using System.Globalization;

namespace Endurance.Cli.Tests;

/// <summary>A test that sends SIGINT, which a process started from a background job ignores by inheritance.</summary>
public sealed class InterruptFactAttribute : FactAttribute
{
    private const string Status = "/proc/self/status";
    private const string Ignored = "SigIgn:";

    public InterruptFactAttribute()
    {
        if (OperatingSystem.IsWindows())
            Skip = "Signals are tested on Unix only.";
        else if (IsInterruptIgnored())
            Skip = "SIGINT is ignored by whoever started the tests.";
    }

    /// <summary>SIGINT is signal 2, the second bit of the mask.</summary>
    private static bool IsInterruptIgnored() => File.Exists(Status) && File.ReadLines(Status)
        .Where(line => line.StartsWith(Ignored, StringComparison.Ordinal))
        .Any(line => (ulong.Parse(line[Ignored.Length..].Trim(), NumberStyles.HexNumber, CultureInfo.InvariantCulture) & 0b10) != 0);
}
