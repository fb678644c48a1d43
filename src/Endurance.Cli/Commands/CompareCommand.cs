using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Output;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.LayoutComparison;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance compare FILE...</c>: scenarios and their layouts side by side.</summary>
internal static class CompareCommand
{
    private const string AsDrawn = "as drawn";

    public static Command Create(Screen screen)
    {
        var options = new CompareOptions();
        var command = new Command("compare", "Sets the layouts of one or more scenarios side by side.");
        options.AddTo(command);
        command.Answers((parse, output, error, cancellation) =>
            Execute(options.Read(parse), output, error, screen, cancellation));
        return command;
    }

    private static int Execute(CompareRequest request, TextWriter output, TextWriter error, Screen screen, CancellationToken cancellation)
    {
        if (Layouts(request, error) is not { } layouts)
            return ExitCode.Usage;
        var cases = layouts.SelectMany(layout => layout.Scenario.FailureCases).Select(failureCase => failureCase.Name).Distinct(StringComparer.Ordinal).ToList();
        if (request.Case is { } name && PartName.Unknown("--case", "failure case", "cases", name, cases) is { } unknown)
        {
            error.WriteLine($"endurance: {unknown}");
            return ExitCode.Usage;
        }

        ImmutableArray<LayoutResult> results;
        using (var progress = new StudyProgress(screen.ShowsProgress && request.ShowsProgress ? error : null))
            results = LayoutComparisonStudy.Run(layouts, new SimulationOptions().Tolerance, progress.Report, cancellation);
        RequestedFolder.Write(request.OutputFolder, () => Files(results, request.Case ?? cases[0]), request.IsForced, request.IsQuiet ? null : error, cancellation);
        ResultFormat.Write(
            request.Format, () => LayoutJson.Write(results), () => LayoutCsv.Write(results), () => request.IsQuiet ? LayoutReport.Describe(results).InBrief : LayoutReport.Describe(results), screen, output);
        return ScenarioFile.ExitOf([.. results.SelectMany(layout => layout.Cases).Select(one => one.Result)], error);
    }

    /// <summary>Each file as drawn, then its layouts; <see langword="null"/> after something was told to be wrong.</summary>
    private static ImmutableArray<NamedLayout>? Layouts(CompareRequest request, TextWriter error)
    {
        var layouts = ImmutableArray.CreateBuilder<NamedLayout>();
        var isGood = true;
        foreach (var file in request.Files)
        {
            var drawn = ScenarioReader.ReadFile(file, overlays: request.Overlays);
            if (drawn.Scenario is null || !request.IsQuiet)
                ScenarioFile.WriteDiagnostics(drawn.Diagnostics, error);
            isGood &= Add(drawn, file, request.Files.Count > 1 ? file : AsDrawn);
            foreach (var name in drawn.Layouts)
            {
                var laid = ScenarioReader.ReadFile(file, name, request.Overlays);
                if (laid.Scenario is null || !request.IsQuiet)
                    ScenarioFile.WriteDiagnostics([.. laid.Diagnostics.Where(told => told.Layout is not null)], error);
                isGood &= Add(laid, file, request.Files.Count > 1 ? $"{file}: {name}" : name);
            }
        }

        return isGood ? layouts.ToImmutable() : null;

        bool Add(ScenarioReadResult read, string file, string name)
        {
            if (read.Scenario is not { } scenario)
                return false;
            if (ScenarioFile.NothingToRun(file, scenario) is { } nothing)
            {
                error.WriteLine($"endurance: {nothing}");
                return false;
            }

            layouts.Add(new NamedLayout(name, scenario));
            return true;
        }
    }

    private static ImmutableArray<OutputFile> Files(ImmutableArray<LayoutResult> results, string failureCase) =>
    [
        OutputFile.OfText("compare.json", () => LayoutJson.Write(results)),
        .. LayoutPlot.Describe(results, failureCase) is { } plot ? OutputFile.OfPlot($"layouts-{FileStem.Of(failureCase)}", plot) : [],
    ];
}
