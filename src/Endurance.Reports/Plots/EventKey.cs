using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Reports.Plots;

/// <summary>Gathers what happened into numbered marks that do not overlap.</summary>
internal static class EventKey
{
    /// <summary>Of the time axis: the width of a numbered mark.</summary>
    private const double MarkWidth = 0.03;
    private const int MostInOneMark = 5;

    public static ImmutableArray<PlotEvent> Of(Scenario scenario, SimulationResult run, double span)
    {
        var groups = new List<List<ToldEvent>>();
        foreach (var told in ToldEvent.Of(run.Events))
        {
            if (told.Event.Kind is EventKind.End && run.BreakOff is null && !TracePoints.EndedEarly(scenario, run))
                continue;
            if (groups.Count == 0 || told.Event.Time.Minutes - groups[^1][0].Event.Time.Minutes > span * MarkWidth)
                groups.Add([]);
            groups[^1].Add(told);
        }

        return [.. groups.Select((group, i) => new PlotEvent(i + 1, group[0].Event.Time.Minutes, Text(group)))];
    }

    private static string Text(List<ToldEvent> group)
    {
        var told = new List<string>();
        var minutes = "";
        foreach (var happened in group.Take(MostInOneMark))
        {
            var at = CellText.Minutes(happened.Event.Time);
            var what = VisibleText.Shortened(happened.Event.What, 60);
            if (happened.More > 0)
                what += $" (and {RoundedNumber.Short(happened.More, 0)} times more until {CellText.Minutes(happened.Last)} min)";
            told.Add(at == minutes ? what : $"{at} min: {what}");
            minutes = at;
        }

        if (group.Count > MostInOneMark)
            told.Add($"and {RoundedNumber.Short(group.Count - MostInOneMark, 0)} more");
        return string.Join("; ", told);
    }
}
