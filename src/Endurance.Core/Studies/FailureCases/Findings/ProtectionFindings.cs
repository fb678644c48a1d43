using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Fuses, breakers and resistors against what they carry, or would.</summary>
internal static class ProtectionFindings
{
    public static IEnumerable<Finding> Of(Scenario scenario, SimulationResult run) =>
        [.. Opened(run), .. scenario.Feeds.Select(feed => TooSmall(scenario, feed)).OfType<Finding>(), .. Resistors(scenario, run)];

    private static IEnumerable<Finding> Opened(SimulationResult run)
    {
        foreach (var protection in run.Protections)
        {
            if (protection is not { TimeOpened: { } time, OpenedAt: { } amperes })
                continue;
            string[] lost = [.. run.Loads.Where(load => load.TimePowered == time).Select(load => load.Name)];
            var took = lost.Length == 0 ? "No load is lost with it" : $"It takes {Figures.Names(lost)} with it";
            yield return new Finding("protection-opened", Severity.Warning, protection.Owner, Figures.Amperes(amperes),
                $"The {ProtectionWords.Of(protection.Kind)} of {protection.Owner}, {Figures.Amperes(protection.Rating)}, opens at {Figures.Minutes(time)} under {Figures.Amperes(amperes)}. {took}. Use one that carries this, with wire to match, or carry less.");
        }
    }

    /// <summary>A feed that may have to carry its bus alone, behind a fuse that would not carry it.</summary>
    private static Finding? TooSmall(Scenario scenario, Feed feed)
    {
        Protection?[] fitted = [feed.Fuse, feed.Breaker, feed.FusibleLink];
        if (fitted.OfType<Protection>().MinBy(protection => protection.Rating) is not { } smallest || !HasAnotherSupply(scenario, feed))
            return null;
        var volts = new BusVoltages(scenario).OfBattery(feed.To);
        var behind = Behind(scenario, feed);
        var demand = scenario.Loads
            .Where(load => behind.Contains(load.Bus) && (load.IsOn || IsEverConnected(scenario, load)))
            .Aggregate(Current.Zero, (sum, load) => sum + (load.CurrentAt(volts) * load.Duty));
        return demand <= smallest.Rating ? null
            : new Finding("protection-too-small", Severity.Warning, feed.Name, Figures.Amperes(demand),
                $"If {feed.Name} has to carry {feed.To} alone, the loads behind it draw {Figures.Amperes(demand)} on average at {Figures.Volts(volts)}; its {ProtectionWords.Of(smallest.Kind)} is {Figures.Amperes(smallest.Rating)}. Use a larger one with wire to match, or shed before the transfer.");
    }

    private static bool HasAnotherSupply(Scenario scenario, Feed feed) =>
        scenario.Feeds.Any(other => other != feed && string.Equals(other.To, feed.To, StringComparison.Ordinal));

    /// <summary>The bus it feeds, and those that closed feeds carry on to and nothing else supplies.</summary>
    private static HashSet<string> Behind(Scenario scenario, Feed feed)
    {
        var behind = new HashSet<string>(StringComparer.Ordinal) { feed.To };
        foreach (var onward in scenario.Feeds.Where(onward => string.Equals(onward.From, feed.To, StringComparison.Ordinal)))
        {
            if (scenario.IsDrawnClosed(onward) && !HasAnotherSupply(scenario, onward))
                behind.Add(onward.To);
        }

        return behind;
    }

    private static bool IsEverConnected(Scenario scenario, Load load) =>
        scenario.FailureCases.SelectMany(failureCase => failureCase.Timeline).SelectMany(step => step.Actions)
            .Any(action => action.Verb == ActionVerb.Connect && string.Equals(action.Target, load.Name, StringComparison.Ordinal));

    private static IEnumerable<Finding> Resistors(Scenario scenario, SimulationResult run)
    {
        foreach (var (feed, outcome) in scenario.Feeds.Zip(run.Feeds))
        {
            if (feed.Resistor is not { Rated: { } rated } resistor)
                continue;
            var amperes = Math.Max(outcome.HighestCurrent.Amperes, -outcome.LowestCurrent.Amperes);
            var heat = Power.FromWatts(amperes * amperes * resistor.Resistance.Ohms);
            if (heat <= rated)
                continue;
            var value = FormattableString.Invariant($"{heat.Watts:0.#} W");
            yield return new Finding("resistor-too-hot", Severity.Warning, feed.Name, value,
                $"The resistor of {feed.Name} takes up to {value} and is rated {rated}. Use a larger one, mounted where it can get hot.");
        }
    }
}
