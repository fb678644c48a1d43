using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Endurance.Cli.Output;
using Endurance.Quantities;
using Endurance.Reports.Html;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.BatteryCurves;
using Endurance.Studies.FailureCases;
using Endurance.Studies.LoadAnalysis;
using Endurance.Studies.SingleFailures;
using Endurance.Studies.Sizing;
using Endurance.Studies.Wiring;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary>Runs every study that the page for a reviewer shows.</summary>
internal static class ReportFacts
{
    /// <summary>Points this far apart, and thinned afterwards, draw the same curve; a longer horizon has wider ones.</summary>
    private const double SampleSeconds = 10, MostSamples = 5_000;

    /// <summary>Limits are shown to a tenth; a coarser solver finds them as well.</summary>
    private static readonly SimulationOptions Coarse = new() { Tolerance = 1e-6 };

    /// <exception cref="OutputException">The file cannot be read any more, or has changed.</exception>
    public static ReviewFacts Of(string path, IReadOnlyList<string> overlays, DateOnly? day, CancellationToken cancellation)
    {
        var file = Read(path);
        ImmutableArray<ReviewFile> above = [.. overlays.Select(Read)];
        var scenario = ScenarioReader.ReadText(path, file.Text, overlays: [.. overlays.Zip(above, (named, overlay) => new OverlayText(named, overlay.Text))]).Scenario
            ?? throw new OutputException($"{path} changed while it was read");
        var interval = Math.Max(SampleSeconds, scenario.Horizon.Seconds / MostSamples);
        return new ReviewFacts
        {
            Scenario = scenario,
            File = file,
            Overlays = above,
            Version = VersionAction.Version,
            Date = day,
            Cases = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions { SampleInterval = Duration.FromSeconds(interval) }, cancellation),
            Loads = LoadAnalysisStudy.Run(scenario, cancellation),
            Wiring = WiringStudy.Run(scenario, new WiringOptions(), cancellation),
            SingleFailures = SingleFailureStudy.Run(scenario, new SingleFailureOptions(), cancellation),
            Batteries = [.. scenario.Batteries.Select(battery => BatteryCurveStudy.Run(scenario, battery, new BatteryCurveOptions(), cancellation))],
            Margins = scenario.Requirements.IsEmpty ? [] : Margins(scenario, cancellation),
        };
    }

    private static ReviewFile Read(string path)
    {
        try
        {
            var bytes = File.ReadAllBytes(path);
            return new ReviewFile(Path.GetFileName(path), Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), Convert.ToHexStringLower(SHA256.HashData(bytes)));
        }
        catch (Exception exception) when (OutputException.IsDisk(exception))
        {
            throw new OutputException($"cannot read {path}: {exception.Message.ReplaceLineEndings(" ")}");
        }
    }

    private static ImmutableArray<SizingMargin> Margins(Scenario scenario, CancellationToken cancellation) =>
    [
        .. scenario.Batteries.Select(battery => new SizingMargin(
            $"least health of {battery.Name}", "%", 100, battery.Health * 100, SizingStudy.Health(scenario, battery.Name, Coarse, cancellation))),
        new SizingMargin("most delay of everything the pilot does", "min", 1.0 / 60, 0, SizingStudy.Delay(scenario, Coarse, cancellation)),
    ];
}
