using System.Collections.Immutable;
using Endurance.Studies.LayoutComparison;

namespace Endurance.Reports.Plots;

/// <summary>The essential bus of every layout in one failure case.</summary>
public static class LayoutPlot
{
    /// <summary>Layouts without the case have no curve; <see langword="null"/> when none has it.</summary>
    /// <param name="layouts">At least one.</param>
    /// <param name="failureCase">Name of the case.</param>
    public static PlotDescription? Describe(ImmutableArray<LayoutResult> layouts, string failureCase) => BusCurvesPlot.Describe(
        $"Essential bus of every layout: {VisibleText.Shortened(failureCase, 40)}",
        layouts[0].Scenario.Title,
        [.. from layout in layouts
            where layout.Scenario.EssentialBus is not null
            from one in layout.Cases
            where one.Result.Name == failureCase
            select new BusCurve(layout.Name, layout.Scenario, one.Result, layout.Scenario.EssentialBus!)]);
}
