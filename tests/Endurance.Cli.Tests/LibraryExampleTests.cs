using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace Endurance.Cli.Tests;

/// <summary>The library used by another program, as README.md shows it.</summary>
public sealed class LibraryExampleTests
{
    [Fact]
    public void Example_RunOnTheFloatplane_TellsTheMinutesOfTheProgram()
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Endurance.Example.dll"), Path.Combine(Root(), "scenarios", "floatplane.yaml")])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        Assert.StartsWith("alternator_failure: essential_bus lost at 151.6 min, Pass\nalternator_failure_unnoticed: primary_display lost at 80.8 min, Pass\n", output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Equal(0, process.ExitCode);
    }

    [Fact]
    public void Example_OfTheReadme_IsTheFileThatRuns()
    {
        var program = File.ReadAllText(Path.Combine(Root(), "tests", "Endurance.Example", "Program.cs")).ReplaceLineEndings("\n");

        Assert.Contains($"```csharp\n{program}```\n", File.ReadAllText(Path.Combine(Root(), "README.md")).ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    private static string Root([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", ".."));
}
