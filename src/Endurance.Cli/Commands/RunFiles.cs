using System.Collections.Immutable;
using Endurance.Cli.Output;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Cli.Commands;

/// <summary>What <c>endurance run --out</c> puts into its folder.</summary>
internal static class RunFiles
{
    public static ImmutableArray<OutputFile> Of(Scenario scenario, ImmutableArray<CaseResult> cases, bool hasPlots) =>
    [
        OutputFile.OfText("results.json", () => FailureCaseJson.Write(scenario.Title, cases)),
        .. Traces(cases),
        .. hasPlots ? Plots(scenario, cases) : [],
    ];

    private static IEnumerable<OutputFile> Traces(ImmutableArray<CaseResult> cases)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var result in cases)
        {
            var stem = FileStem.Unique($"case-{FileStem.Of(result.Name)}-trace", taken);
            if (result.Run.Trace is { } trace)
                yield return OutputFile.OfText($"{stem}.csv", () => TraceCsv.Write(trace));
        }
    }

    private static IEnumerable<OutputFile> Plots(Scenario scenario, ImmutableArray<CaseResult> cases) =>
        PlotSet.Describe(scenario, cases).SelectMany(described => OutputFile.OfPlot(described.FileStem, described.Plot));
}
