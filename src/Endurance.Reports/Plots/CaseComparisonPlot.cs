using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Plots;

/// <summary>One bus in every failure case.</summary>
internal static class CaseComparisonPlot
{
    public static PlotDescription? Describe(Scenario scenario, ImmutableArray<CaseResult> cases, string bus) => BusCurvesPlot.Describe(
        $"{VisibleText.Shortened(bus, 40)} in every failure case",
        scenario.Title,
        [.. cases.Select(result => new BusCurve(result.Name, scenario, result, bus))]);
}
