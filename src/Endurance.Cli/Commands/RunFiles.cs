using System.Collections.Immutable;
using System.Text;
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
        Text("results.json", () => JsonReport.Write(scenario.Title, cases)),
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
                yield return Text($"{stem}.csv", () => TraceCsv.Write(trace));
        }
    }

    private static IEnumerable<OutputFile> Plots(Scenario scenario, ImmutableArray<CaseResult> cases) =>
        PlotSet.Describe(scenario, cases).SelectMany(described => new OutputFile[]
        {
            new($"{described.FileStem}.png", stream => stream.Write(PlotRenderer.Png(described.Plot))),
            new($"{described.FileStem}.svg", stream => stream.Write(PlotRenderer.Svg(described.Plot))),
        });

    private static OutputFile Text(string name, Func<string> content) =>
        new(name, stream => stream.Write(Encoding.UTF8.GetBytes(content())));
}
