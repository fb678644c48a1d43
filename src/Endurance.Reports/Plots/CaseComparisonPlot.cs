using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Plots;

/// <summary>One bus in every failure case: volts over minutes, with the ends marked.</summary>
internal static class CaseComparisonPlot
{
    public static PlotDescription? Describe(Scenario scenario, ImmutableArray<CaseResult> cases, string bus)
    {
        var series = cases.Select((result, i) => Curve(scenario, result, i, bus)).OfType<PlotSeries>().ToImmutableArray();
        if (series.IsEmpty)
            return null;
        var cutoff = scenario.Buses.Single(candidate => candidate.Name == bus).Cutoff;
        ImmutableArray<ReferenceLine> lines = [.. CutoffLines(cutoff), .. RequirementLines(scenario, cases, bus)];
        var x = AxisScale.Minutes(series.Max(line => line.Points[^1].X));
        var y = VoltAxis.For(series, cutoff is { } level ? [level.Volts] : []);
        return new PlotDescription
        {
            Title = $"{VisibleText.Shortened(bus, 40)} in every failure case",
            Subject = VisibleText.Shortened(scenario.Title, 40),
            Panels = [new PlotPanel { X = x, Y = y, Series = series, Lines = lines, Markers = [.. series.Select(line => End(scenario, cases[line.Style], line, bus))] }],
            Notes =
            [
                cutoff is null ? "The words on the curves tell when the run ends." : "The words on the curves tell when the bus first falls below its cutoff.",
                .. VoltAxis.Note(y, series),
            ],
        };
    }

    private static PlotSeries? Curve(Scenario scenario, CaseResult result, int style, string bus)
    {
        if (result.Run.Trace is not { } trace || trace.Seconds.IsEmpty)
            return null;
        var column = trace.BusVolts.Single(candidate => candidate.Name == bus);
        return new PlotSeries(result.Name, style, TracePoints.Of(trace, column, endedEarly: TracePoints.EndedEarly(scenario, result.Run)));
    }

    private static ImmutableArray<ReferenceLine> CutoffLines(Voltage? cutoff) =>
        cutoff is { } level ? [new ReferenceLine(ReferenceLineKind.Cutoff, level.Volts, $"cutoff {RoundedNumber.Short(level.Volts, 2)} V")] : [];

    /// <summary>Requirements on the bus itself or on a load that sits on it, one line for each span of minutes.</summary>
    private static IEnumerable<ReferenceLine> RequirementLines(Scenario scenario, ImmutableArray<CaseResult> cases, string bus)
    {
        var onBus = scenario.Loads.Where(load => load.Bus == bus).Select(load => load.Name).ToHashSet(StringComparer.Ordinal);
        return cases
            .SelectMany(result => result.Requirements)
            .Select(judged => judged.Requirement)
            .Where(requirement => requirement.Bus == bus || requirement.Loads.Any(onBus.Contains))
            .Distinct()
            .GroupBy(requirement => requirement.Endure)
            .OrderBy(same => same.Key)
            .Select(same => new ReferenceLine(ReferenceLineKind.Requirement, same.Key.Minutes, $"required {CellText.RoundMinutes(same.Key)} min{OfCases(same)}"));
    }

    /// <summary>Names the cases of a requirement that does not hold for all.</summary>
    private static string OfCases(IEnumerable<Requirement> same) => same.Any(requirement => requirement.Case is null)
        ? ""
        : VisibleText.Shortened($" ({string.Join(", ", same.Select(requirement => requirement.Case).Distinct(StringComparer.Ordinal))})", 34);

    private static PlotMarker End(Scenario scenario, CaseResult result, PlotSeries line, string bus)
    {
        var outcome = result.Run.Buses.Single(candidate => candidate.Name == bus);
        var end = outcome.Cutoff is null && TracePoints.EndedEarly(scenario, result.Run) ? result.Run.End : outcome.TimeToCutoff;
        var x = end?.Minutes ?? line.Points[^1].X;
        var text = end is { } reached ? $"{CellText.Minutes(reached)} min" : $"> {CellText.RoundMinutes(scenario.Horizon)} min";
        return new PlotMarker(new PlotPoint(x, TracePoints.ValueAt(line.Points, x)), text, line.Style);
    }
}
