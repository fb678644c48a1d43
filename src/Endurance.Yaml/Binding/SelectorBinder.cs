using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>selectors</c>.</summary>
internal static class SelectorBinder
{
    public static ImmutableArray<Selector> Bind(MappingReader top) =>
        [.. NamedParts.Of(top, "selectors", SupplyKeys.Selector).Select(part => new Selector { Name = part.Name, Positions = Positions(part.Reader), At = part.Reader.RequiredText("at") })];

    private static ImmutableArray<(string Position, string Feed)> Positions(MappingReader reader)
    {
        var form = reader.Known("positions").Form;
        switch (reader.Find("positions"))
        {
            case MappingNode mapping:
                return [.. mapping.Entries.Where(entry => NamedParts.HasGoodName(reader.Reading, entry.Key)).Select(entry => Position(reader, entry, form))];
            case ScalarNode { IsNull: true }:
                reader.Error("missing-value", "positions", "`positions` has no value", form);
                break;
            case { } other:
                reader.Reading.WrongShape(other, reader.PlaceOf("positions"), "`positions`", form);
                break;
        }

        return [];
    }

    private static (string Position, string Feed) Position(MappingReader reader, MappingEntry entry, string form)
    {
        var place = entry.Value is ScalarNode { IsNull: false } ? entry.Value.Span : entry.Key.Span;
        return (entry.Key.Value, reader.Reading.ScalarAt(entry.Value, place, entry.Key.Value, form)?.Value ?? MappingReader.NoName);
    }
}
