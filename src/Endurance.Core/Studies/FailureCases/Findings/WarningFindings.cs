using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Low-voltage warnings that cannot see the failure, or see it too late.</summary>
internal static class WarningFindings
{
    /// <summary>Share of the batteries' energy after which a warning is late.</summary>
    private const double LateShare = 0.5;

    public static IEnumerable<Finding> Of(Scenario scenario, FailureCase failureCase, SimulationResult run)
    {
        var lost = CaseSources.LostAlternators(scenario, failureCase);
        foreach (var (warning, outcome) in scenario.Warnings.Zip(run.Warnings))
        {
            if (outcome.HasFailed)
                continue;
            if (Masked(scenario, failureCase, warning, lost) is { } masked)
                yield return masked;
            if (Timing(scenario, run, warning, outcome) is { } timing)
                yield return timing;
        }
    }

    /// <summary>Another source behind a diode holds the sensed bus up while the one that failed is gone.</summary>
    private static Finding? Masked(Scenario scenario, FailureCase failureCase, LowVoltageWarning warning, ImmutableArray<Alternator> lost)
    {
        Feed[] bothWays = [.. scenario.Feeds.Where(feed => feed.Diode is null)];
        var sensed = Reach.From([warning.Senses], bothWays, []);
        foreach (var alternator in lost)
        {
            if (sensed.Contains(alternator.Bus))
                continue;
            Feed[] others = [.. scenario.Feeds.Where(feed => !Touches(feed, alternator.Bus))];
            string[] sources = [.. CaseSources.RemainingBuses(scenario, failureCase).Where(bus => !string.Equals(bus, alternator.Bus, StringComparison.Ordinal))];
            if (!Reach.From(sources, others, []).Contains(warning.Senses))
                continue;
            return new Finding("warning-behind-diode", Severity.Warning, warning.Name, warning.Senses,
                $"{warning.Name} senses {warning.Senses}, which a diode parts from {alternator.Bus} and another source holds up: it does not see that {alternator.Name} is gone. Let it sense {alternator.Bus}.");
        }

        return null;
    }

    private static Finding? Timing(Scenario scenario, SimulationResult run, LowVoltageWarning warning, WarningOutcome outcome)
    {
        var threshold = Figures.Volts(warning.Below);
        var loss = run.Loads.Where(load => load.TimePowered is not null && scenario.EssentialLoads.Contains(load.Name)).MinBy(load => load.TimePowered);
        if (loss is not null && !(outcome.TimeOn < loss.TimePowered))
        {
            var lostAt = Figures.Minutes(loss.TimePowered!.Value);
            var on = outcome.TimeOn is { } late ? $"comes on at {Figures.Minutes(late)}" : "never comes on";
            return new Finding("warning-blind", Severity.Warning, warning.Name, threshold,
                $"{warning.Name} {on}, but {loss.Name} is lost at {lostAt}. {threshold} on {warning.Senses} is too low or the wrong bus; a threshold just below the lowest alternator voltage tells at once.");
        }

        ReadOnlySpan<double> charges = outcome.TimeOn is null ? [.. run.Batteries.Select(battery => battery.ChargeEnd)] : outcome.ChargesWhenOn.AsSpan();
        var gone = EnergyGone(scenario, charges);
        if (gone <= LateShare)
            return null;
        var share = Figures.Percent(gone);
        var when = outcome.TimeOn is { } time ? $"comes on at {Figures.Minutes(time)}" : $"is still dark at {Figures.Minutes(run.End)}";
        return new Finding("warning-late", Severity.Warning, warning.Name, share,
            $"{warning.Name} {when}, with {share} of the batteries' energy gone. Raise its {threshold}: a threshold just below the lowest alternator voltage tells at once.");
    }

    /// <summary>Of the batteries that have given any, by charge and full EMF.</summary>
    private static double EnergyGone(Scenario scenario, ReadOnlySpan<double> charges)
    {
        var before = 0.0;
        var gone = 0.0;
        for (var i = 0; i < charges.Length; i++)
        {
            var battery = scenario.Batteries[i];
            if (charges[i] >= battery.InitialCharge)
                continue;
            var full = battery.EffectiveCapacity.AmpereHours * battery.Emf.Y[^1];
            before += full * battery.InitialCharge;
            gone += full * (battery.InitialCharge - charges[i]);
        }

        return before > 0 ? gone / before : 0;
    }

    private static bool Touches(Feed feed, string bus) =>
        string.Equals(feed.From, bus, StringComparison.Ordinal) || string.Equals(feed.To, bus, StringComparison.Ordinal);
}
