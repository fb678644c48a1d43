using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Plots;

/// <summary>The pictures of a report.</summary>
public static class PlotSet
{
    /// <summary>All cases on the essential bus, minutes of essential loads, then buses and batteries of each case. A case without a trace has no curves.</summary>
    /// <param name="scenario">The scenario that was run.</param>
    /// <param name="cases">Its results.</param>
    /// <param name="bus">Bus of the first picture; <see langword="null"/>: the bus most essential loads sit on.</param>
    /// <exception cref="ArgumentException">There is no such bus.</exception>
    public static ImmutableArray<(string FileStem, PlotDescription Plot)> Describe(Scenario scenario, ImmutableArray<CaseResult> cases, string? bus = null)
    {
        if (bus is not null && !scenario.Buses.Any(candidate => candidate.Name == bus))
            throw new ArgumentException($"There is no bus named {bus}.", nameof(bus));
        var plots = ImmutableArray.CreateBuilder<(string, PlotDescription)>();
        var taken = new HashSet<string>(StringComparer.Ordinal);
        void Add(string stem, PlotDescription? plot)
        {
            if (plot is not null)
                plots.Add((FileStem.Unique(stem, taken), plot));
        }

        if ((bus ?? scenario.EssentialBus) is { } compared)
            Add("all-cases-" + FileStem.Of(compared), CaseComparisonPlot.Describe(scenario, cases, compared));
        Add("essential-loads", EssentialLoadsPlot.Describe(scenario, cases));
        foreach (var result in cases)
        {
            Add($"case-{FileStem.Of(result.Name)}-buses", CaseBusesPlot.Describe(scenario, result));
            Add($"case-{FileStem.Of(result.Name)}-batteries", CaseBatteriesPlot.Describe(scenario, result));
        }

        return plots.ToImmutable();
    }
}
