using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary>What the commands that read a scenario have in common.</summary>
internal static class ScenarioFile
{
    public static Argument<string> Argument() => new("FILE") { Description = "The scenario, a YAML file." };

    public static Option<string[]> Overlays() => new("--overlay")
    {
        Description = "Lay this file of changes over the scenario, such as the measured.yaml of reconcile; may be given several times, the last one on top.",
        HelpName = "FILE",
        CustomParser = Word.Several("--overlay"),
    };

    public static void WriteDiagnostics(ImmutableArray<Diagnostic> diagnostics, TextWriter error)
    {
        if (!diagnostics.IsEmpty)
            error.Write(DiagnosticRenderer.Render(diagnostics));
    }

    /// <summary>Reads a scenario, tells what is wrong with it, and answers from it when it can be used.</summary>
    public static int Answer(string path, IReadOnlyList<string>? overlays, TextWriter error, Func<Scenario, int> answer)
    {
        var read = ScenarioReader.ReadFile(path, overlays: overlays);
        WriteDiagnostics(read.Diagnostics, error);
        if (read.Scenario is not { } scenario)
            return ExitCode.Usage;
        try
        {
            return answer(scenario);
        }
        catch (ChatteringException exception)
        {
            error.WriteLine($"endurance: {exception.Message}");
            return ExitCode.Usage;
        }
    }

    /// <summary>Why there is nothing to run in a faultless scenario; <see langword="null"/> when there is.</summary>
    public static string? NothingToRun(string path, Scenario scenario) => scenario.FailureCases.IsEmpty
        ? $"{path} has no failure cases; write at least one under failure_cases, with an empty timeline for the aircraft as drawn"
        : null;
}
