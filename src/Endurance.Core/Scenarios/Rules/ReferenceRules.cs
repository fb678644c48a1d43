using System.Collections.Immutable;
using static System.FormattableString;

namespace Endurance.Scenarios.Rules;

/// <summary>Every bus, ground, load and warning that a part names exists, and a feed or charger joins two buses.</summary>
internal static class ReferenceRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario)
    {
        ImmutableArray<string> buses = [.. scenario.Buses.Select(bus => bus.Name)];
        if (buses.IsEmpty)
        {
            yield return RuleFinding.Error("no-buses", "buses", "", "the scenario has no bus", "one bus at least, such as `main_bus: {}`");
            yield break;
        }

        foreach (var (path, bus) in References(scenario))
        {
            if (!buses.Contains(bus, StringComparer.Ordinal))
                yield return Unknown(path, bus, "bus", buses);
        }

        ImmutableArray<string> grounds = [.. scenario.Grounds.Select(ground => ground.Name)];
        foreach (var (path, ground) in GroundReferences(scenario).Where(reference => !grounds.Contains(reference.Ground, StringComparer.Ordinal)))
            yield return Unknown(path, ground, "ground", grounds);

        foreach (var charger in scenario.Chargers.Where(charger => string.Equals(charger.From, charger.To, StringComparison.Ordinal)))
            yield return RuleFinding.Error("feed-to-itself", $"chargers.{charger.Name}.to", charger.To, $"the charger `{charger.Name}` begins and ends at `{charger.To}`", "two different buses");
        foreach (var feed in scenario.Feeds.Where(feed => string.Equals(feed.From, feed.To, StringComparison.Ordinal)))
            yield return RuleFinding.Error("feed-to-itself", $"feeds.{feed.Name}.to", feed.To, $"the feed `{feed.Name}` begins and ends at `{feed.To}`", "two different buses");
    }

    /// <summary>The error for a name that nothing of a kind has.</summary>
    public static RuleFinding Unknown(string path, string name, string kind, ImmutableArray<string> known) => RuleFinding.Error(
        "unknown-name", path, name, $"there is no {kind} `{name}`", Listed(kind, known), NearestName.Find(name, known));

    /// <summary>Names to choose from, as far as they fit on a line.</summary>
    public static string Listed(string kind, ImmutableArray<string> known)
    {
        const int most = 8;
        var article = kind[0] is 'a' or 'e' ? "an" : "a";
        if (known.IsEmpty)
            return $"the name of {article} {kind}, but the scenario has none";
        var listed = string.Join(", ", known.Take(most));
        var rest = known.Length > most ? Invariant($" and {known.Length - most} more") : "";
        return $"the name of {article} {kind}: {listed}{rest}";
    }

    private static IEnumerable<(string Path, string Bus)> References(Scenario scenario) =>
    [
        .. scenario.Batteries.Select(part => ($"batteries.{part.Name}.bus", part.Bus)),
        .. scenario.Alternators.Select(part => ($"alternators.{part.Name}.bus", part.Bus)),
        .. scenario.Feeds.Select(part => ($"feeds.{part.Name}.from", part.From)),
        .. scenario.Feeds.Select(part => ($"feeds.{part.Name}.to", part.To)),
        .. scenario.Feeds.Where(part => part.Contactor?.CoilBus is not null).Select(part => ($"feeds.{part.Name}.contactor.coil_bus", part.Contactor!.CoilBus!)),
        .. scenario.Alternators.Where(part => part.Field is not null).Select(part => ($"alternators.{part.Name}.field.bus", part.Field!.Bus)),
        .. scenario.Chargers.Select(part => ($"chargers.{part.Name}.from", part.From)),
        .. scenario.Chargers.Select(part => ($"chargers.{part.Name}.to", part.To)),
        .. scenario.Warnings.Select(part => ($"low_voltage_warnings.{part.Name}.senses", part.Senses)),
        .. scenario.Loads.Where(part => part.Inputs.IsEmpty).Select(part => ($"loads.{part.Name}.bus", part.Bus)),
        .. scenario.Loads.SelectMany(part => part.Inputs.Select((input, index) => (Invariant($"loads.{part.Name}.inputs.{index}.bus"), input.Bus))),
    ];

    private static IEnumerable<(string Path, string Ground)> GroundReferences(Scenario scenario) =>
    [
        .. scenario.Feeds.Where(part => part.Return?.To is not null).Select(part => ($"feeds.{part.Name}.return.to", part.Return!.To!)),
        .. scenario.Loads.Where(part => part.Return?.To is not null).Select(part => ($"loads.{part.Name}.return.to", part.Return!.To!)),
    ];
}
