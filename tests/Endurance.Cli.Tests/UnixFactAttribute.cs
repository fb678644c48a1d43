namespace Endurance.Cli.Tests;

/// <summary>A test of what only Unix has: signals, a Bourne shell, device files.</summary>
public sealed class UnixFactAttribute : FactAttribute
{
    public UnixFactAttribute()
    {
        if (OperatingSystem.IsWindows())
            Skip = "Signals, shells and device files are tested on Unix only.";
    }
}
