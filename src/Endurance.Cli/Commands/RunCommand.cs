using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Output;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance run FILE</c>: every failure case, simulated and judged.</summary>
internal static class RunCommand
{
    /// <summary>More rows than anybody plots, and few enough to be kept in memory for every case.</summary>
    private const int MostSamples = 200_000;

    public static Command Create(Screen screen)
    {
        var options = new RunOptions();
        var command = new Command("run", "Runs the failure cases of a scenario and judges them against its requirements.");
        options.AddTo(command);
        command.Answers((parse, output, error, cancellation) =>
            Execute(options.Read(parse), output, error, screen, cancellation));
        return command;
    }

    private static int Execute(RunRequest request, TextWriter output, TextWriter error, Screen screen, CancellationToken cancellation) =>
        ScenarioFile.Answer(ScenarioReader.ReadFile(request.File, request.Layout, request.Overlays), request.IsQuiet, error, scenario => Refusal(request, scenario), scenario =>
        {
            var results = FailureCaseStudy.Run(scenario, Selected(request, scenario), Options(request), cancellation);
            RequestedFolder.Write(request.OutputFolder, () => RunFiles.Of(scenario, results, request.HasPlots), request.IsForced, request.IsQuiet ? null : error, cancellation);
            ResultFormat.Write(request.Format, scenario, results, request.IsQuiet, screen, output);
            return ScenarioFile.ExitOf(results, error);
        });

    /// <summary>Why this request cannot be answered from this scenario; <see langword="null"/> when it can.</summary>
    private static string? Refusal(RunRequest request, Scenario scenario)
    {
        if (ScenarioFile.NothingToRun(request.File, scenario) is { } nothing)
            return nothing;

        var known = scenario.FailureCases.Select(failureCase => failureCase.Name).ToList();
        if (request.Cases.Select(name => PartName.Unknown("--case", "failure case", "cases", name, known)).FirstOrDefault(text => text is not null) is { } unknown)
            return unknown;

        var samples = scenario.Horizon / request.SampleInterval;
        return request.OutputFolder is not null && samples > MostSamples
            ? $"--sample: {request.SampleInterval} over a horizon of {scenario.Horizon} is more than {MostSamples} rows; choose at least {Math.Ceiling(scenario.Horizon.Seconds / MostSamples * 1000) / 1000} s."
            : null;
    }

    /// <summary>In the order of the scenario, each once, whatever the order of the options.</summary>
    private static ImmutableArray<FailureCase> Selected(RunRequest request, Scenario scenario) => request.Cases.Count == 0
        ? scenario.FailureCases
        : [.. scenario.FailureCases.Where(failureCase => request.Cases.Contains(failureCase.Name, StringComparer.Ordinal))];

    private static SimulationOptions Options(RunRequest request) => new()
    {
        Tolerance = request.Tolerance,
        SampleInterval = request.OutputFolder is null ? null : request.SampleInterval,
    };
}
