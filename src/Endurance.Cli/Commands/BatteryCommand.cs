using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Output;
using Endurance.Components;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.BatteryCurves;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance battery FILE</c>: minutes over current of a scenario's batteries.</summary>
internal static class BatteryCommand
{
    public static Command Create(Screen screen)
    {
        var options = new BatteryOptions();
        var command = new Command("battery", "Tells how long the batteries of a scenario last at constant currents.");
        options.AddTo(command);
        command.Answers((parse, output, error, cancellation) =>
            Execute(options.Read(parse), output, error, screen, cancellation));
        return command;
    }

    private static int Execute(BatteryRequest request, TextWriter output, TextWriter error, Screen screen, CancellationToken cancellation) =>
        ScenarioFile.Answer(ScenarioReader.ReadFile(request.File, overlays: request.Overlays), isQuiet: false, error, scenario => Refusal(request, scenario), scenario =>
        {
            ImmutableArray<BatteryCurve> curves = [.. Selected(request, scenario).Select(battery => BatteryCurveStudy.Run(scenario, battery, request.Options, cancellation))];
            RequestedFolder.Write(request.OutputFolder, () => Files(scenario, curves), request.IsForced, error, cancellation);
            if (request.Format == ResultFormat.Json)
                output.Write(BatteryCurveJson.Write(curves[0]));
            else
                ResultFormat.Write(request.Format, BatteryCurveReport.Describe(scenario, curves), screen, output);
            return ExitCode.Met;
        });

    private static string? Refusal(BatteryRequest request, Scenario scenario)
    {
        var names = scenario.Batteries.Select(battery => battery.Name).ToList();
        if (names.Count == 0)
            return $"{request.File} has no battery.";
        if (request.Battery is { } name && PartName.Unknown("--battery", "battery", "batteries", name, names) is { } unknown)
            return unknown;
        return request.Format == ResultFormat.Json && request.Battery is null && names.Count > 1
            ? $"--format json is about one battery; choose it with --battery. The batteries are: {string.Join(", ", names)}."
            : null;
    }

    private static IEnumerable<Battery> Selected(BatteryRequest request, Scenario scenario) =>
        scenario.Batteries.Where(battery => request.Battery is null || string.Equals(battery.Name, request.Battery, StringComparison.Ordinal));

    private static ImmutableArray<OutputFile> Files(Scenario scenario, ImmutableArray<BatteryCurve> curves)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            .. curves.SelectMany(curve => OutputFile.OfPlot(FileStem.Unique($"battery-{FileStem.Of(curve.Battery.Name)}", taken), BatteryCurvePlot.Describe(scenario.Title, curve))),
        ];
    }
}
