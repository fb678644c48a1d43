using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>The parts of a top-level section, each with its name.</summary>
internal static class NamedParts
{
    private const int LongestName = 60;

    /// <summary>
    /// One reader a part, in the order of the file. A part whose shape is wrong is reported and left out; one whose name is wrong is
    /// reported and read all the same, so that what is in it and what refers to it is judged too.
    /// </summary>
    /// <param name="top">The scenario's own reader.</param>
    /// <param name="key">Name of the section.</param>
    /// <param name="section">Keys of a part.</param>
    public static IEnumerable<(string Name, MappingReader Reader)> Of(MappingReader top, string key, Section section)
    {
        foreach (var entry in EntriesOf(top, key))
        {
            if (!HasGoodName(top.Reading, entry.Key) && string.IsNullOrWhiteSpace(entry.Key.Value))
                continue;
            var name = entry.Key.Value;
            var kind = section.Kind[(section.Kind.IndexOf(' ', StringComparison.Ordinal) + 1)..];
            if (entry.Value is MappingNode mapping)
                yield return (name, new MappingReader(top.Reading, mapping, section, $"the {kind} {Quoted.Of(name)}", entry.Key.Span));
            else if (entry.Value is ScalarNode { IsNull: true })
                yield return (name, new MappingReader(top.Reading, new MappingNode(entry.Value.Span, []), section, $"the {kind} {Quoted.Of(name)}", entry.Key.Span));
            else
                top.Reading.WrongShape(entry.Value, entry.Key.Span, Quoted.Of(name), $"keys of {section.Kind}: {section.Listed}");
        }
    }

    /// <summary>Whether a key can be a name; a fault is reported.</summary>
    public static bool HasGoodName(Reading reading, ScalarNode key)
    {
        var isGood = key.Value.Length is > 0 and <= LongestName
            && key.Value.All(character => char.IsLetterOrDigit(character) || character is '_' or '-' or ' ')
            && key.Value.Trim().Length == key.Value.Length;
        if (!isGood)
            reading.Diagnostics.Error("bad-name", key.Span, $"{Quoted.Of(key.Value)} cannot be a name", $"letters, digits, _, - and spaces between them, at most {LongestName} in all");
        return isGood;
    }

    /// <summary>Keys and values of a top-level section; none when it is absent, or after a diagnostic.</summary>
    public static IEnumerable<MappingEntry> EntriesOf(MappingReader top, string key)
    {
        switch (top.Find(key))
        {
            case null or ScalarNode { IsNull: true }:
                return [];
            case MappingNode mapping:
                return mapping.Entries;
            case var other:
                top.Reading.WrongShape(other, top.PlaceOf(key), $"`{key}`", top.Known(key).Form);
                return [];
        }
    }
}
