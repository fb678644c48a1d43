using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>feeds</c>.</summary>
internal static class FeedBinder
{
    public static ImmutableArray<Feed> Bind(MappingReader top, NamedDiodes diodes, Temperature ambient) =>
        [.. NamedParts.Of(top, "feeds", FeedKeys.Feed).Select(part => Feed(part.Name, part.Reader, diodes, ambient))];

    private static Feed Feed(string name, MappingReader reader, NamedDiodes diodes, Temperature ambient)
    {
        var (diode, diodeName) = diodes.Of(name, reader);
        var feed = new Feed
        {
            Name = name,
            From = reader.RequiredText("from"),
            To = reader.RequiredText("to"),
            Diode = diode,
            DiodeName = diodeName,
            Wire = WireBinder.Bind(name, reader, ambient),
            Contactor = ContactBinder.Contactor(name, reader),
            Switch = ContactBinder.Switch(name, reader),
            Breaker = ProtectionBinder.Bind(name, reader, "breaker", ProtectionKind.Breaker, FeedKeys.Breaker),
            Fuse = ProtectionBinder.Bind(name, reader, "fuse", ProtectionKind.Fuse, FeedKeys.Fuse),
            FusibleLink = ProtectionBinder.Bind(name, reader, "fusible_link", ProtectionKind.FusibleLink, FeedKeys.FusibleLink),
            Resistor = Resistor(name, reader),
            Shunt = reader.Resistance("shunt") ?? default,
            Return = GroundBinder.Return(name, reader, ambient),
        };
        if (feed.ConductorResistance == Resistance.Zero)
            reader.Reading.Assume(name, "0.1 mohm in series: none of its parts has a resistance");
        return feed;
    }

    private static SeriesResistor? Resistor(string feed, MappingReader reader)
    {
        if (reader.Find("resistor") is not { } node)
            return null;
        var keys = node is MappingNode ? reader.Mapping("resistor", FeedKeys.Resistor) : null;
        if (keys?.Has("rated") is not true)
            reader.Reading.Assume(feed, "resistor that stands any power: no rating given");
        var ohms = keys?.RequiredQuantity("resistance") ?? reader.Reading.Quantity(node, reader.PlaceOf("resistor"), "resistor", FeedKeys.SeriesResistance);
        if (ohms is null)
            return null;
        return new SeriesResistor(Resistance.FromOhms(ohms.Value), keys?.Quantity("rated") is { } watts ? Power.FromWatts(watts) : null);
    }
}
