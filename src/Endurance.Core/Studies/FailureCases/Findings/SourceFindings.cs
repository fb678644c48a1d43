using Endurance.Components;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Batteries, alternators and chargers that promise more than they may keep.</summary>
internal static class SourceFindings
{
    /// <summary>Share of its limit from which a charger counts as being at it.</summary>
    private const double AtLimit = 0.999;

    public static IEnumerable<Finding> Of(Scenario scenario, SimulationResult run) =>
        [.. AssumedNew(scenario), .. Joined(scenario), .. Alone(run), .. Unexcited(scenario, run), .. ChargersAtLimit(scenario, run)];

    private static IEnumerable<Finding> AssumedNew(Scenario scenario) =>
        from battery in scenario.Batteries
        where battery is { Health: >= 1, InitialCharge: >= 1, CapacityFactor: >= 1 }
            && IsAssumed(scenario, battery, "health") && IsAssumed(scenario, battery, "charge at time zero")
        let value = FormattableString.Invariant($"{battery.EffectiveCapacity.AmpereHours:0.##} Ah")
        select new Finding("battery-assumed-new", Severity.Warning, battery.Name, value,
            $"{battery.Name} counts with its whole {value}: new, full and unhurt by cold, because the scenario says nothing of its health and charge. Give `health` from a capacity test, `charge`, and what cold takes.");

    private static bool IsAssumed(Scenario scenario, Battery battery, string what) =>
        scenario.Assumptions.Any(assumption => assumption.Origin == Origin.Default
            && string.Equals(assumption.Part, battery.Name, StringComparison.Ordinal)
            && assumption.Text.StartsWith(what, StringComparison.Ordinal));

    /// <summary>Batteries that stand in parallel, as drawn, with no diode between them.</summary>
    private static IEnumerable<Finding> Joined(Scenario scenario)
    {
        Feed[] closed = [.. scenario.Feeds.Where(feed => feed.Diode is null && scenario.IsDrawnClosed(feed))];
        for (var i = 1; i < scenario.Batteries.Length; i++)
        {
            var second = scenario.Batteries[i];
            var joined = Reach.From([second.Bus], closed, []);
            if (scenario.Batteries.Take(i).FirstOrDefault(battery => joined.Contains(battery.Bus)) is not { } first)
                continue;
            yield return new Finding("batteries-joined", Severity.Warning, second.Name, first.Name,
                $"{second.Name} and {first.Name} are in parallel with nothing between them: a shorted cell or a deep discharge of one takes the other with it, and the answer counts on both. Put a diode or an open contactor between them.");
        }
    }

    private static IEnumerable<Finding> Alone(SimulationResult run) =>
        from alternator in run.Alternators
        where alternator.TimeAlone is not null
        let value = Figures.Minutes(alternator.TimeAlone!.Value)
        select new Finding("alternator-alone", Severity.Warning, alternator.Name, value,
            $"From {value} on {alternator.Name} carries its bus with no battery to steady it. Many alternators and regulators lose their voltage or overshoot then; do not count on these minutes. Keep a battery on the bus, or switch the alternator off.");

    private static IEnumerable<Finding> Unexcited(Scenario scenario, SimulationResult run) =>
        from pair in scenario.Alternators.Zip(run.Alternators)
        where pair.Second.TimeUnexcited is not null
        let value = Figures.Minutes(pair.Second.TimeUnexcited!.Value)
        select new Finding("alternator-without-field", Severity.Warning, pair.First.Name, value,
            $"From {value} on {pair.First.Name} gives nothing although its engine runs: no battery reaches {pair.First.Field!.Bus}, which feeds its field. Some alternators go on by themselves then, none may be counted on. Feed the field from a bus that keeps its battery.");

    /// <summary>A charger into a battery is at its limit whenever it has work to do; one that feeds loads alone should not be.</summary>
    private static IEnumerable<Finding> ChargersAtLimit(Scenario scenario, SimulationResult run)
    {
        foreach (var (charger, outcome) in scenario.Chargers.Zip(run.Chargers))
        {
            if (outcome.HighestCurrent < charger.Limit * AtLimit)
                continue;
            var limit = Figures.Amperes(charger.Limit);
            var fills = scenario.Batteries.Any(battery => string.Equals(battery.Bus, charger.To, StringComparison.Ordinal));
            yield return fills
                ? new Finding("charger-at-limit", Severity.Information, charger.Name, limit,
                    $"{charger.Name} gives its limit of {limit} while it refills {charger.To}.")
                : new Finding("charger-at-limit", Severity.Caution, charger.Name, limit,
                    $"{charger.Name} gives its limit of {limit}: {charger.To} wants more, and its voltage falls. Use a larger one, or shed loads on {charger.To}.");
        }
    }
}
