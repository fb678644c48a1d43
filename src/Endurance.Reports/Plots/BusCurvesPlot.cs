using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Reports.Plots;

/// <summary>Buses of several runs: volts over minutes, with the ends marked.</summary>
internal static class BusCurvesPlot
{
    /// <summary><see langword="null"/> when no run was recorded.</summary>
    public static PlotDescription? Describe(string title, string subject, ImmutableArray<BusCurve> curves)
    {
        var series = curves.Select(Curve).OfType<PlotSeries>().ToImmutableArray();
        if (series.IsEmpty)
            return null;
        Voltage[] cutoffs = [.. curves.Select(Cutoff).OfType<Voltage>().Distinct().Order()];
        ImmutableArray<ReferenceLine> lines = [.. cutoffs.Select(CutoffLine), .. RequirementLines(curves)];
        var x = AxisScale.Minutes(series.Max(line => line.Points[^1].X));
        var y = VoltAxis.For(series, cutoffs.Select(level => level.Volts));
        return new PlotDescription
        {
            Title = title,
            Subject = VisibleText.Shortened(subject, 40),
            Panels = [new PlotPanel { X = x, Y = y, Series = series, Lines = lines, Markers = [.. series.Select(line => End(curves[line.Style], line))] }],
            Notes =
            [
                cutoffs.Length == 0 ? "The words on the curves tell when the run ends." : "The words on the curves tell when the bus first falls below its cutoff.",
                .. VoltAxis.Note(y, series),
            ],
        };
    }

    private static Voltage? Cutoff(BusCurve curve) => curve.Scenario.Buses.Single(candidate => candidate.Name == curve.Bus).Cutoff;

    private static PlotSeries? Curve(BusCurve curve, int style)
    {
        if (curve.Result.Run.Trace is not { } trace || trace.Seconds.IsEmpty)
            return null;
        var column = trace.BusVolts.Single(candidate => candidate.Name == curve.Bus);
        return new PlotSeries(curve.Name, style, TracePoints.Of(trace, column, endedEarly: TracePoints.EndedEarly(curve.Scenario, curve.Result.Run)));
    }

    private static ReferenceLine CutoffLine(Voltage level) => new(ReferenceLineKind.Cutoff, level.Volts, $"cutoff {RoundedNumber.Short(level.Volts, 2)} V");

    /// <summary>Requirements on the bus itself or on a load that sits on it, one line for each span of minutes.</summary>
    private static IEnumerable<ReferenceLine> RequirementLines(ImmutableArray<BusCurve> curves) => curves
        .SelectMany(curve => curve.Result.Requirements.Select(judged => (Curve: curve, judged.Requirement)))
        .Where(asked => asked.Requirement.Bus == asked.Curve.Bus
            || asked.Curve.Scenario.Loads.Any(load => load.Bus == asked.Curve.Bus && asked.Requirement.Loads.Contains(load.Name)))
        .Select(asked => asked.Requirement)
        .Distinct()
        .GroupBy(requirement => requirement.Endure)
        .OrderBy(same => same.Key)
        .Select(same => new ReferenceLine(ReferenceLineKind.Requirement, same.Key.Minutes, $"required {CellText.RoundMinutes(same.Key)} min{OfCases(same)}"));

    /// <summary>Names the cases of a requirement that does not hold for all.</summary>
    private static string OfCases(IEnumerable<Scenarios.Requirement> same) => same.Any(requirement => requirement.Case is null)
        ? ""
        : VisibleText.Shortened($" ({string.Join(", ", same.Select(requirement => requirement.Case).Distinct(StringComparer.Ordinal))})", 34);

    private static PlotMarker End(BusCurve curve, PlotSeries line)
    {
        var outcome = curve.Result.Run.Buses.Single(candidate => candidate.Name == curve.Bus);
        var end = outcome.Cutoff is null && TracePoints.EndedEarly(curve.Scenario, curve.Result.Run) ? curve.Result.Run.End : outcome.TimeToCutoff;
        var x = end?.Minutes ?? line.Points[^1].X;
        var text = end is { } reached ? $"{CellText.Minutes(reached)} min" : $"> {CellText.RoundMinutes(curve.Scenario.Horizon)} min";
        return new PlotMarker(new PlotPoint(x, TracePoints.ValueAt(line.Points, x)), text, line.Style);
    }
}
