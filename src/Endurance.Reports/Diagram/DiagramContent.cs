using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Reports.Diagram;

/// <summary>What a diagram of a scenario shows, before anything has a place.</summary>
internal static class DiagramContent
{
    private const int MostLines = 14;

    /// <summary>Buses from the sources down, each with its loads.</summary>
    public static ImmutableArray<DiagramRow> Rows(Scenario scenario) => [.. Ordered(scenario).Select(bus => new DiagramRow(bus, Lines(scenario, bus)))];

    /// <summary>Sources first, then feeds and chargers, each in the order of the file.</summary>
    public static ImmutableArray<DiagramBranch> Branches(Scenario scenario, ImmutableArray<DiagramRow> rows)
    {
        var row = rows.Index().ToDictionary(item => item.Item.Name, item => item.Index, StringComparer.Ordinal);
        return
        [
            .. scenario.Alternators.Select(alternator => new DiagramBranch(alternator.Name, row[alternator.Bus], null, [new(DiagramSymbol.Alternator, Amperes(alternator.Rated))])),
            .. scenario.Batteries.Select(battery => new DiagramBranch(battery.Name, row[battery.Bus], null, [new(DiagramSymbol.Battery, $"{RoundedNumber.Short(battery.RatedCapacity.AmpereHours, 2)} Ah")])),
            .. scenario.Feeds.Select(feed => new DiagramBranch(feed.Name, row[feed.From], row[feed.To], Parts(scenario, feed))),
            .. scenario.Chargers.Select(charger => new DiagramBranch(charger.Name, row[charger.From], row[charger.To], [new(DiagramSymbol.Charger, $"to {RoundedNumber.Short(charger.Output.Volts, 2)} V, {Amperes(charger.Limit)}")])),
        ];
    }

    private static List<string> Ordered(Scenario scenario)
    {
        var ordered = new List<string>();
        void Visit(string bus)
        {
            if (!ordered.Contains(bus, StringComparer.Ordinal))
                ordered.Add(bus);
        }

        foreach (var bus in scenario.Batteries.Take(1).Select(battery => battery.Bus).Concat(scenario.Alternators.Select(alternator => alternator.Bus)))
            Visit(bus);
        for (var i = 0; i < ordered.Count; i++)
        {
            foreach (var feed in scenario.Feeds.Where(feed => string.Equals(feed.From, ordered[i], StringComparison.Ordinal)))
                Visit(feed.To);
            foreach (var charger in scenario.Chargers.Where(charger => string.Equals(charger.From, ordered[i], StringComparison.Ordinal)))
                Visit(charger.To);
        }

        foreach (var bus in scenario.Buses)
            Visit(bus.Name);
        return ordered;
    }

    private static ImmutableArray<string> Lines(Scenario scenario, string bus)
    {
        ImmutableArray<string> lines =
        [
            .. scenario.Loads.Where(load => string.Equals(load.Bus, bus, StringComparison.Ordinal) || load.Inputs.Any(input => string.Equals(input.Bus, bus, StringComparison.Ordinal)))
                .Select(load => (load.IsEssential ? "* " : "- ") + DiagramLabel.Of(load.Name) + (load.IsOn ? "" : " (off)")),
            .. scenario.Warnings.Where(warning => string.Equals(warning.Senses, bus, StringComparison.Ordinal)).Select(warning => "! " + DiagramLabel.Of(warning.Name)),
        ];
        return lines.Length <= MostLines ? lines : [.. lines.Take(MostLines - 1), $"and {RoundedNumber.Short(lines.Length - MostLines + 1, 0)} more"];
    }

    private static ImmutableArray<DiagramPart> Parts(Scenario scenario, Feed feed)
    {
        var parts = ImmutableArray.CreateBuilder<DiagramPart>();
        if (feed.Contactor is { } contactor)
            parts.Add(new(DiagramSymbol.Contactor, "contactor " + State(contactor.IsClosed), contactor.IsClosed));
        if (feed.Switch is { } hand)
            parts.Add(new(DiagramSymbol.Contact, "switch " + State(hand.IsClosed), hand.IsClosed));
        foreach (var selector in scenario.Selectors)
        {
            foreach (var (position, _) in selector.Positions.Where(place => string.Equals(place.Feed, feed.Name, StringComparison.Ordinal)))
                parts.Add(new(DiagramSymbol.Contact, DiagramLabel.Of($"{selector.Name}: {position}"), string.Equals(selector.At, position, StringComparison.Ordinal)));
        }

        Protect(parts, DiagramSymbol.Breaker, "breaker", feed.Breaker);
        Protect(parts, DiagramSymbol.Fuse, "fuse", feed.Fuse);
        Protect(parts, DiagramSymbol.FusibleLink, "fusible link", feed.FusibleLink);
        if (feed.Resistor is not null)
            parts.Add(new(DiagramSymbol.Resistor, "resistor"));
        if (feed.Shunt.Ohms > 0)
            parts.Add(new(DiagramSymbol.Resistor, "shunt"));
        if (feed.Diode is { } diode)
            parts.Add(new(DiagramSymbol.Diode, DiagramLabel.Of(feed.DiodeName ?? (diode is IdealDiodeController ? "ideal diode" : "diode"))));
        return parts.ToImmutable();
    }

    private static void Protect(ImmutableArray<DiagramPart>.Builder parts, DiagramSymbol symbol, string word, Protection? protection)
    {
        if (protection is not null)
            parts.Add(new(symbol, $"{word} {Amperes(protection.Rating)}{(protection.IsClosed ? "" : ", open")}", protection.IsClosed));
    }

    private static string State(bool isClosed) => isClosed ? "closed" : "open";

    private static string Amperes(Current current) => RoundedNumber.Short(current.Amperes, 2) + " A";
}
