using System.CommandLine;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance check FILE</c>: what is wrong with a scenario, without running it.</summary>
internal static class CheckCommand
{
    public static Command Create()
    {
        var file = ScenarioFile.Argument();
        var overlays = ScenarioFile.Overlays();
        var command = new Command("check", "Reads a scenario and tells every mistake in it.") { file, overlays };
        command.Answers((parse, output, error, _) => Execute(parse.GetRequiredValue(file), parse.GetValue(overlays), output, error));
        return command;
    }

    private static int Execute(string path, IReadOnlyList<string>? overlays, TextWriter output, TextWriter error)
    {
        var read = ScenarioReader.ReadFile(path, overlays: overlays);

        // What is wrong with a layout alone; the rest has been told of the scenario as drawn.
        var ofLayouts = read.Layouts.SelectMany(layout => ScenarioReader.ReadFile(path, layout, overlays).Diagnostics).Where(told => told.Layout is not null);
        var diagnostics = read.Diagnostics.AddRange(ofLayouts);
        ScenarioFile.WriteDiagnostics(diagnostics, error);
        var errors = diagnostics.Count(diagnostic => diagnostic.Severity == Severity.Error);
        var warnings = diagnostics.Length - errors;
        var counts = $"{Count(errors, "error")}, {Count(warnings, "warning")}";
        if (errors > 0 || read.Scenario is not { } scenario)
        {
            error.WriteLine($"{path}: {counts}");
            return ExitCode.Usage;
        }

        if (ScenarioFile.NothingToRun(path, scenario) is { } nothing)
        {
            error.WriteLine($"endurance: {nothing}");
            return ExitCode.Usage;
        }

        var layouts = read.Layouts.IsEmpty ? "" : $", {Count(read.Layouts.Length, "layout")}";
        output.WriteLine($"{path}: {Parts(scenario)}{layouts}: {counts}");
        return ExitCode.Met;
    }

    private static string Parts(Scenario scenario) => string.Join(", ", [
        Count(scenario.Buses.Length, "bus", "buses"),
        Count(scenario.Batteries.Length, "battery", "batteries"),
        Count(scenario.Alternators.Length, "alternator"),
        Count(scenario.Feeds.Length, "feed"),
        Count(scenario.Loads.Length, "load"),
        Count(scenario.FailureCases.Length, "failure case"),
        Count(scenario.Requirements.Length, "requirement"),
    ]);

    private static string Count(int count, string one, string? many = null) => count switch
    {
        0 => $"no {many ?? one + "s"}",
        1 => $"1 {one}",
        _ => $"{count} {many ?? one + "s"}",
    };
}
