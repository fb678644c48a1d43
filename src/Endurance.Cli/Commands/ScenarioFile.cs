using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary>What the commands that read a scenario have in common.</summary>
internal static class ScenarioFile
{
    public static Argument<string> Argument() => new("FILE") { Description = "The scenario, a YAML file.", CustomParser = FileWords.One };

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
    public static int Answer(string path, IReadOnlyList<string>? overlays, TextWriter error, Func<Scenario, int> answer) =>
        Answer(ScenarioReader.ReadFile(path, overlays: overlays), isQuiet: false, error, _ => null, answer);

    /// <summary>Tells what is wrong with a scenario that was read, or with what is asked of it, and answers from it when it can.</summary>
    /// <param name="read">The scenario, or why there is none.</param>
    /// <param name="isQuiet">Leaves out the warnings of a scenario that can be used.</param>
    /// <param name="error">Takes what is wrong.</param>
    /// <param name="refusal">Why the request cannot be answered from this scenario; <see langword="null"/> when it can.</param>
    /// <param name="answer">Does the work, writes the result and returns the exit code.</param>
    public static int Answer(ScenarioReadResult read, bool isQuiet, TextWriter error, Func<Scenario, string?> refusal, Func<Scenario, int> answer)
    {
        if (read.Scenario is null || !isQuiet)
            WriteDiagnostics(read.Diagnostics, error);
        if (read.Scenario is not { } scenario)
            return ExitCode.Usage;
        if (refusal(scenario) is { } reason)
        {
            error.WriteLine($"endurance: {reason}");
            return ExitCode.Usage;
        }

        return answer(scenario);
    }

    /// <summary>The exit code that cases ask for, after those that could not be run to their end are told: a fault of the scenario.</summary>
    public static int ExitOf(IEnumerable<CaseResult> cases, TextWriter error)
    {
        var (isMet, isWhole) = (true, true);
        foreach (var result in cases)
        {
            isMet &= result.Verdict != Verdict.Fail;
            isWhole &= result.Chatter is null;
            if (result.Chatter is { } chatter)
                error.WriteLine($"endurance: {chatter.Told(result.Name)}");
        }

        return !isWhole ? ExitCode.Usage : isMet ? ExitCode.Met : ExitCode.NotMet;
    }

    /// <summary>Why there is nothing to run in a faultless scenario; <see langword="null"/> when there is.</summary>
    public static string? NothingToRun(string path, Scenario scenario) => scenario.FailureCases.IsEmpty
        ? $"{path} has no failure cases; write at least one under failure_cases, with an empty timeline for the aircraft as drawn"
        : null;
}
