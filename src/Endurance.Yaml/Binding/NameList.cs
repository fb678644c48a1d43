using System.Collections.Immutable;
using Endurance.Yaml.Documents;

namespace Endurance.Yaml.Binding;

/// <summary>Reads one name, or a list of names.</summary>
internal static class NameList
{
    /// <summary>In the order of the file; names that could not be read are reported and left out.</summary>
    public static ImmutableArray<string> Of(MappingReader reader, string key)
    {
        var form = reader.Known(key).Form;
        if (reader.Find(key) is not SequenceNode list)
            return reader.Text(key) is { } single ? [single] : [];
        return [.. list.Items.Select(item => reader.Reading.ScalarAt(item, item.Span, key, form)?.Value).OfType<string>()];
    }
}
