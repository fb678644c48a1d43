using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Scenarios;
using Endurance.Studies;
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

    /// <summary>The exit code that cases ask for, after those that could not be run to their end are told.</summary>
    public static int ExitOf(IReadOnlyCollection<CaseResult> cases, TextWriter error) => ExitOf(Judged(cases), LeftOut.Of(cases), error);

    /// <summary>The exit code that the verdicts of cases ask for.</summary>
    public static int Judged(IEnumerable<CaseResult> cases) => cases.Any(result => result.Verdict == Verdict.Fail) ? ExitCode.NotMet : ExitCode.Met;

    /// <summary>Tells what could not be computed, which decides the exit code before anything that could.</summary>
    /// <param name="otherwise">The exit code where everything could be.</param>
    /// <param name="leftOut">Each is told in a line of its own.</param>
    /// <param name="error">Takes the lines.</param>
    public static int ExitOf(int otherwise, IReadOnlyCollection<LeftOut> leftOut, TextWriter error)
    {
        foreach (var one in leftOut)
            error.WriteLine($"endurance: {one.Told}");
        return leftOut.Count == 0 ? otherwise : leftOut.Max(one => ExitCode.Of(one.BreakOff));
    }

    /// <summary>Why there is nothing to run in a faultless scenario; <see langword="null"/> when there is.</summary>
    public static string? NothingToRun(string path, Scenario scenario) => scenario.FailureCases.IsEmpty
        ? $"{path} has no failure cases; write at least one under failure_cases, with an empty timeline for the aircraft as drawn"
        : null;
}
