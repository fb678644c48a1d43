using System.Collections.Immutable;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Reads lists of mappings such as <c>- {resistance: 6 mohm, time: 40 s}</c>.</summary>
internal static class MappingList
{
    /// <summary>One reader an item; empty when the key is absent, or after a diagnostic.</summary>
    /// <param name="owner">Holds the key.</param>
    /// <param name="key">A key whose value is a list of mappings.</param>
    /// <param name="section">Keys of an item.</param>
    /// <param name="item">What a message calls an item.</param>
    public static ImmutableArray<MappingReader> Of(MappingReader owner, string key, Section section, string item)
    {
        var form = owner.Known(key).Form;
        switch (owner.Find(key))
        {
            case null:
                return [];
            case SequenceNode { Items.IsEmpty: true } or ScalarNode { IsNull: true }:
                owner.Error("missing-value", key, $"`{key}` has no value", form);
                return [];
            case SequenceNode list:
                return [.. list.Items.Select((node, index) => Item(owner, node, key, section, Invariant($"{item} {index + 1}"))).OfType<MappingReader>()];
            case var other:
                owner.Reading.WrongShape(other, owner.PlaceOf(key), $"`{key}`", form);
                return [];
        }
    }

    private static MappingReader? Item(MappingReader owner, DocumentNode node, string key, Section section, string item)
    {
        if (node is MappingNode mapping)
        {
            var place = mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Key.Span;
            return new MappingReader(owner.Reading, mapping, section, $"{item} of {owner.Owner}", place);
        }

        owner.Reading.WrongShape(node, node.Span, $"{item} of `{key}`", owner.Known(key).Form);
        return null;
    }
}
