using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Plots;

/// <summary>Minutes of every essential load in every case, against what is required.</summary>
internal static class EssentialLoadsPlot
{
    public static PlotDescription? Describe(Scenario scenario, ImmutableArray<CaseResult> cases)
    {
        var essential = scenario.EssentialLoads;
        if (essential.IsEmpty || cases.IsEmpty)
            return null;
        var groups = ImmutableArray.CreateBuilder<BarGroup>();
        var bars = ImmutableArray.CreateBuilder<PlotBar>();
        var row = 0;
        foreach (var result in cases)
        {
            groups.Add(new BarGroup(row++, VisibleText.Shortened(result.Name, 60)));
            foreach (var name in essential)
                bars.Add(Bar(row++, scenario, result, result.Run.Loads.Single(load => load.Name == name)));
        }

        var longest = bars.Max(bar => Math.Max(bar.Length, bar.Required ?? 0));
        // Room at the right for the words at the ends of the longest bars.
        var x = AxisScale.Minutes(longest * 1.18) with { Label = "minutes powered, to the first loss" };
        return new PlotDescription
        {
            Title = "Essential loads: minutes powered after each failure",
            Subject = VisibleText.Shortened(scenario.Title, 40),
            Panels = [new PlotPanel { X = x, Groups = groups.ToImmutable(), Bars = bars.ToImmutable() }],
            Notes = ["An arrow head means longer than was simulated."],
        };
    }

    private static PlotBar Bar(int row, Scenario scenario, CaseResult result, LoadOutcome load)
    {
        var (length, text, goesOn) = Span(scenario.Horizon, load);
        var judged = result.Requirements.Where(requirement => requirement.Requirement.Loads.Contains(load.Name)).ToImmutableArray();
        Duration? required = judged.IsEmpty ? null : judged.Max(requirement => requirement.Requirement.Endure);
        return new PlotBar(row, VisibleText.Shortened(load.Name, 28), length, text, KindOf(load, judged), goesOn, required?.Minutes);
    }

    private static (double Length, string Text, bool GoesOn) Span(Duration horizon, LoadOutcome load)
    {
        if (!load.WasConnected)
            return (0, "not on", false);
        if (load.TimePowered is { } lost)
            return (lost.Minutes, $"{CellText.Minutes(lost)} min", false);
        return load.TimeShed is { } shed
            ? (shed.Minutes, $"switched off at {CellText.Minutes(shed)} min", false)
            : (horizon.Minutes, $"> {CellText.RoundMinutes(horizon)} min", true);
    }

    /// <summary>A load misses a requirement by its own loss; the requirement may fail by another load without it.</summary>
    private static BarKind KindOf(LoadOutcome load, ImmutableArray<RequirementResult> judged)
    {
        if (judged.IsEmpty)
            return BarKind.NothingRequired;
        var missed = judged.Any(requirement =>
            (requirement.Requirement.DipsAllowed ? load.TimeLostForGood : load.TimePowered) is { } lost && lost < requirement.Requirement.Endure);
        return missed ? BarKind.Missed : BarKind.Met;
    }
}
