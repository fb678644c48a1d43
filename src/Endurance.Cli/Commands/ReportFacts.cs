using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Endurance.Quantities;
using Endurance.Reports.Html;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.BatteryCurves;
using Endurance.Studies.FailureCases;
using Endurance.Studies.LayoutComparison;
using Endurance.Studies.LoadAnalysis;
using Endurance.Studies.SingleFailures;
using Endurance.Studies.Sizing;
using Endurance.Studies.Wiring;

namespace Endurance.Cli.Commands;

/// <summary>Runs every study that the page for a reviewer shows.</summary>
internal static class ReportFacts
{
    /// <summary>Points this far apart, and thinned afterwards, draw the same curve; a longer horizon has wider ones.</summary>
    private const double SampleSeconds = 10, MostSamples = 5_000;

    /// <summary>Limits are shown to a tenth; a coarser solver finds them as well.</summary>
    private static readonly SimulationOptions Coarse = new() { Tolerance = 1e-6 };

    /// <param name="source">With a scenario.</param>
    /// <param name="day">That the page carries.</param>
    /// <param name="cancellation">Stops the studies.</param>
    public static ReviewFacts Of(ReportSource source, DateOnly? day, CancellationToken cancellation)
    {
        var scenario = source.Scenario ?? throw new ArgumentException("Has no scenario.", nameof(source));
        var interval = Math.Max(SampleSeconds, scenario.Horizon.Seconds / MostSamples);
        return new ReviewFacts
        {
            Scenario = scenario,
            File = Shown(source.Path, source.Bytes),
            Overlays = [.. source.Overlays.Select(overlay => Shown(overlay.Path, overlay.Bytes))],
            Version = VersionAction.Version,
            Date = day,
            Cases = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions { SampleInterval = Duration.FromSeconds(interval) }, cancellation),
            Loads = LoadAnalysisStudy.Run(scenario, cancellation),
            Wiring = WiringStudy.Run(scenario, new WiringOptions(), cancellation),
            SingleFailures = SingleFailureStudy.Run(scenario, new SingleFailureOptions(), cancellation),
            Batteries = [.. scenario.Batteries.Select(battery => BatteryCurveStudy.Run(scenario, battery, new BatteryCurveOptions(), cancellation))],
            Layouts = LayoutComparisonStudy.Run(source.Layouts, new SimulationOptions().Tolerance, cancellation: cancellation),
            Margins = scenario.Requirements.IsEmpty ? [] : Margins(scenario, cancellation),
        };
    }

    private static ReviewFile Shown(string path, byte[] bytes) =>
        new(Path.GetFileName(path), Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), Convert.ToHexStringLower(SHA256.HashData(bytes)));

    /// <summary>The least of each battery, and the most time, that still meets every requirement.</summary>
    private static ImmutableArray<SizingMargin> Margins(Scenario scenario, CancellationToken cancellation) =>
    [
        .. scenario.Batteries.Select(battery => new SizingMargin(
            SizingFind.Capacity, battery.Name, battery.RatedCapacity.Coulombs, SizingStudy.Capacity(scenario, battery.Name, keepResistance: false, Coarse, cancellation))),
        .. scenario.Batteries.Select(battery => new SizingMargin(
            SizingFind.Health, battery.Name, battery.Health, SizingStudy.Health(scenario, battery.Name, Coarse, cancellation))),
        .. SizingStudy.HasStepsToDelay(scenario, shedOnly: false)
            ? [new SizingMargin(SizingFind.Delay, "", 0, SizingStudy.Delay(scenario, Coarse, cancellation))]
            : ImmutableArray<SizingMargin>.Empty,
    ];
}
