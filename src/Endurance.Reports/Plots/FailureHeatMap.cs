using System.Collections.Immutable;
using Endurance.Studies.SingleFailures;

namespace Endurance.Reports.Plots;

/// <summary>Every failure of one case against every essential load.</summary>
public static class FailureHeatMap
{
    private const int LongestLabel = 84;
    private const int MostRows = 60;

    /// <summary><see langword="null"/> without essential loads or rows.</summary>
    /// <param name="standing">What failed and what it did.</param>
    /// <param name="failureCase">Name of the case. Of pairs, only those that lose a requirement though neither failure alone does.</param>
    public static PlotDescription? Describe(FailureStanding standing, string failureCase)
    {
        var loads = standing.Scenario.EssentialLoads;
        var all = (standing.IsOfPairs ? standing.Losing : standing.Rows).Where(row => row.Case == failureCase).ToImmutableArray();
        var rows = all.Take(MostRows).ToImmutableArray();
        if (loads.IsEmpty || rows.IsEmpty)
            return null;
        return new PlotDescription
        {
            Title = $"{(standing.IsOfPairs ? "Two failures at once" : "Every single failure")}: {VisibleText.Shortened(failureCase, 40)}",
            Subject = VisibleText.Shortened(standing.Scenario.Title, 40),
            Panels = [],
            Grid = new PlotGrid(
                [.. loads.Select(load => VisibleText.Shortened(load, LongestLabel))],
                [.. rows.Select(row => VisibleText.Shortened(FailureStanding.Name(row), LongestLabel))],
                [.. rows.Select(row => Cells(standing, row))]),
            Notes =
            [
                "Minutes from zero of the timeline to the first loss of each essential load.",
                $"Lasts: not lost within the {CellText.RoundMinutes(standing.Scenario.Horizon)} min simulated.",
                .. all.Length > MostRows ? (ImmutableArray<string>)[$"{all.Length - MostRows} more rows are not shown."] : [],
            ],
        };
    }

    private static ImmutableArray<PlotCell> Cells(FailureStanding standing, FailureRow row) =>
        [.. row.Loads.Select((_, i) => standing.Cell(row, i)).Select(cell => new PlotCell(cell.Text, cell.Kind))];
}
