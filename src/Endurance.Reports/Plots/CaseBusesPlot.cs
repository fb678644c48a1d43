using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Plots;

/// <summary>Every bus of one case: volts over minutes, with what happened marked.</summary>
internal static class CaseBusesPlot
{
    public static PlotDescription? Describe(Scenario scenario, CaseResult result)
    {
        if (result.Run.Trace is not { } trace || trace.Seconds.IsEmpty || trace.BusVolts.IsEmpty)
            return null;
        var endedEarly = TracePoints.EndedEarly(scenario, result.Run);
        var series = trace.BusVolts.Select((bus, i) => new PlotSeries(bus.Name, i, TracePoints.Of(trace, bus, endedEarly: endedEarly))).ToImmutableArray();
        var x = AxisScale.Minutes(result.Run.End.Minutes);
        var y = VoltAxis.For(series, []);
        return new PlotDescription
        {
            Title = $"Bus voltages: {VisibleText.Shortened(result.Name, 40)}",
            Subject = VisibleText.Shortened(scenario.Title, 40),
            Panels = [new PlotPanel { X = x, Y = y, Series = series }],
            Events = EventKey.Of(scenario, result.Run, x.High),
            Notes = VoltAxis.Note(y, series),
        };
    }
}
