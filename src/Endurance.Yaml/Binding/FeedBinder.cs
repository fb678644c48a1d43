using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>feeds</c> and the diodes they use.</summary>
internal static class FeedBinder
{
    // Library diodes are named by kind and rating.
    private static readonly ImmutableArray<string> ClassPrefixes = ["schottky_", "silicon_", "bridge_", "ideal_"];

    /// <summary>Diodes with a name of their own; <see langword="null"/> for one that could not be read.</summary>
    public static ImmutableSortedDictionary<string, Diode?> Diodes(MappingReader top) =>
        NamedParts.Of(top, "diodes", FeedKeys.Diode).ToImmutableSortedDictionary(part => part.Name, part => DiodeBinder.Bind(part.Name, part.Reader), StringComparer.Ordinal);

    public static ImmutableArray<Feed> Bind(MappingReader top, ImmutableSortedDictionary<string, Diode?> diodes, Temperature ambient) =>
        [.. NamedParts.Of(top, "feeds", FeedKeys.Feed).Select(part => Feed(part.Name, part.Reader, diodes, ambient))];

    private static Feed Feed(string name, MappingReader reader, ImmutableSortedDictionary<string, Diode?> diodes, Temperature ambient)
    {
        var (diode, diodeName) = DiodeOf(name, reader, diodes);
        var feed = new Feed
        {
            Name = name,
            From = reader.RequiredText("from"),
            To = reader.RequiredText("to"),
            Diode = diode,
            DiodeName = diodeName,
            Wire = reader.Has("wire") ? WireBinder.Bind(name, reader, ambient) : null,
            Contactor = ContactBinder.Contactor(name, reader),
            Switch = ContactBinder.Switch(name, reader),
            Breaker = ContactBinder.Protection(name, reader, ProtectionKind.Breaker),
            Fuse = ContactBinder.Protection(name, reader, ProtectionKind.Fuse),
        };
        if (feed.ConductorResistance == Resistance.Zero && !reader.Has("resistor"))
            reader.Reading.Assume(name, "0.1 mohm in series: none of its parts has a resistance");
        return feed;
    }

    private static (Diode? Diode, string? Name) DiodeOf(string feed, MappingReader reader, ImmutableSortedDictionary<string, Diode?> diodes)
    {
        if (reader.Find("diode") is not ScalarNode { IsNull: false } named)
            return (reader.Mapping("diode", FeedKeys.Diode) is { } own ? DiodeBinder.Bind(feed, own) : null, null);
        if (diodes.TryGetValue(named.Value, out var diode))
            return (diode, named.Value);
        if (ClassPrefixes.Any(prefix => named.Value.StartsWith(prefix, StringComparison.Ordinal)) && named.Value.Any(char.IsAsciiDigit))
            reader.Error("not-supported-yet", "diode", $"the built-in diode {Quoted.Of(named.Value)} is not supported yet", "a diode with its parameters under `diodes`");
        else
            reader.Error("unknown-name", "diode", $"there is no diode {Quoted.Of(named.Value)}", diodes.IsEmpty ? "a diode under `diodes`, or {kind: ...} here" : $"the name of a diode: {string.Join(", ", diodes.Keys)}", NearestName.Find(named.Value, diodes.Keys));
        return (null, null);
    }
}
