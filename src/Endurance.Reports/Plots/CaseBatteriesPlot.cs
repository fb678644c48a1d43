using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Plots;

/// <summary>Every battery of one case: state of charge above, current below.</summary>
internal static class CaseBatteriesPlot
{
    public static PlotDescription? Describe(Scenario scenario, CaseResult result)
    {
        if (result.Run.Trace is not { } trace || trace.Seconds.IsEmpty || trace.BatteryAmperes.IsEmpty)
            return null;
        var x = AxisScale.Minutes(result.Run.End.Minutes);
        var amperes = Curves(scenario, result.Run, trace, trace.BatteryAmperes, 1, endsAtZero: true);
        var values = amperes.SelectMany(line => line.Points).Select(point => point.Y).Append(0).ToImmutableArray();
        return new PlotDescription
        {
            Title = $"Batteries: {VisibleText.Shortened(result.Name, 40)}",
            Subject = VisibleText.Shortened(scenario.Title, 40),
            Panels =
            [
                new PlotPanel { X = x, Y = AxisScale.AroundZero("state of charge", "%", 0, 100), Series = Curves(scenario, result.Run, trace, trace.BatteryCharge, 100, endsAtZero: false) },
                new PlotPanel { X = x, Y = AxisScale.AroundZero("current", "A", values.Min(), values.Max()), Series = amperes },
            ],
            Events = EventKey.Of(scenario, result.Run, x.High),
            Notes = ["Current is positive when a battery discharges."],
        };
    }

    private static ImmutableArray<PlotSeries> Curves(
        Scenario scenario, SimulationResult run, Trace trace, ImmutableArray<TraceColumn> columns, double scale, bool endsAtZero)
    {
        var endedEarly = TracePoints.EndedEarly(scenario, run);
        return [.. columns.Select((battery, i) => new PlotSeries(battery.Name, i, TracePoints.Of(trace, battery, scale, endsAtZero, endedEarly)))];
    }
}
