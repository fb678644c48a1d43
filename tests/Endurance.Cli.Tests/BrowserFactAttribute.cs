namespace Endurance.Cli.Tests;

/// <summary>A test in a real browser; skipped where none is installed.</summary>
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute()
    {
        if (Chromium is null)
            Skip = "Needs chromium on the PATH.";
    }

    /// <summary>Where the browser is; <see langword="null"/> when there is none.</summary>
    public static string? Chromium { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .SelectMany(folder => (string[])[Path.Combine(folder, "chromium"), Path.Combine(folder, "chromium-browser")])
        .FirstOrDefault(File.Exists);
}
