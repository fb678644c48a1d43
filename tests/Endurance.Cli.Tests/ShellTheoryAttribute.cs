namespace Endurance.Cli.Tests;

/// <summary>A test that needs a shell of this name.</summary>
public sealed class ShellTheoryAttribute : TheoryAttribute
{
    public ShellTheoryAttribute(string shell)
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        if (!folders.Any(folder => File.Exists(Path.Combine(folder, shell))))
            Skip = $"There is no {shell} here.";
    }
}
