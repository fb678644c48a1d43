using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Output;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary>Reads a scenario, asks one study, writes what it found.</summary>
internal static class StudyExecution
{
    /// <summary>Gives a command its work.</summary>
    /// <param name="command">The command.</param>
    /// <param name="screen">Where the result goes.</param>
    /// <param name="read">The shared part of the request.</param>
    /// <param name="refusal">Why this request cannot be answered from a scenario; <see langword="null"/> when it can.</param>
    /// <param name="study">The work itself.</param>
    public static void Set(
        Command command,
        Screen screen,
        Func<ParseResult, StudyRequest> read,
        Func<ParseResult, Scenario, string?> refusal,
        Func<ParseResult, Scenario, StudyProgress, CancellationToken, StudyOutput> study) => command.Answers((parse, output, error, cancellation) =>
            Run(
                read(parse), output, error, screen, scenario => refusal(parse, scenario), (scenario, progress) => study(parse, scenario, progress, cancellation), cancellation));

    private static int Run(
        StudyRequest request,
        TextWriter output,
        TextWriter error,
        Screen screen,
        Func<Scenario, string?> refusal,
        Func<Scenario, StudyProgress, StudyOutput> study,
        CancellationToken cancellation) =>
        ScenarioFile.Answer(
            ScenarioReader.ReadFile(request.File, overlays: request.Overlays), request.IsQuiet, error, scenario => ScenarioFile.NothingToRun(request.File, scenario) ?? refusal(scenario), scenario =>
            {
                StudyOutput found;
                using (var progress = new StudyProgress(screen.ShowsProgress && request.ShowsProgress ? error : null))
                    found = study(scenario, progress);
                RequestedFolder.Write(request.OutputFolder, () => Files(found), request.IsForced, request.IsQuiet ? null : error, cancellation);
                ResultFormat.Write(request.Format, found.Json, found.Csv, () => request.IsQuiet ? found.Document().InBrief : found.Document(), screen, output);
                return found.IsMet ? ExitCode.Met : ExitCode.NotMet;
            });

    private static ImmutableArray<OutputFile> Files(StudyOutput found)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            OutputFile.OfText("result.json", found.Json),
            .. found.Plots().SelectMany(named => named.Plot is { } plot ? OutputFile.OfPlot(FileStem.Unique(named.FileStem, taken), plot) : []),
        ];
    }
}
