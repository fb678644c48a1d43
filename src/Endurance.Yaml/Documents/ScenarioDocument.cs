using System.Globalization;

namespace Endurance.Yaml.Documents;

/// <summary>The node tree of a scenario file.</summary>
internal sealed record ScenarioDocument(SourceText Source, MappingNode Root)
{
    /// <summary>Place of a path such as <c>feeds.essential_normal.to</c>, or of the deepest part of it that is written down.</summary>
    /// <remarks>In a sequence a step of the path is an index, or the text of a scalar.</remarks>
    /// <param name="path">Steps joined by dots.</param>
    /// <param name="named">Where this is the last step and a key, the key is meant and not its value.</param>
    public SourceSpan PlaceOf(string path, string? named = null)
    {
        DocumentNode node = Root;
        var place = Root.Entries.IsEmpty ? Root.Span : Root.Entries[0].Key.Span;
        var rest = path;
        while (rest.Length > 0)
        {
            var step = FirstStep(node, rest);
            var isLast = step.Length == rest.Length;
            if (Step(node, step, rest) is not { } found)
                return place;
            if (node is MappingNode mapping && isLast && string.Equals(rest, named, StringComparison.Ordinal))
                return mapping.Find(step)!.Key.Span;
            (node, place) = found;
            rest = isLast || node is ScalarNode ? "" : rest[(step.Length + 1)..];
        }

        return place;
    }

    /// <summary>Up to the first dot, or the longest key that begins the path: a name that was refused can have dots.</summary>
    private static string FirstStep(DocumentNode node, string path)
    {
        var keys = node is MappingNode mapping ? mapping.Entries.Select(entry => entry.Key.Value) : [];
        var key = keys.Where(key => key.Length > 0 && (path + ".").StartsWith(key + ".", StringComparison.Ordinal)).MaxBy(key => key.Length);
        var dot = path.IndexOf('.', StringComparison.Ordinal);
        return key ?? (dot < 0 ? path : path[..dot]);
    }

    private static (DocumentNode Node, SourceSpan Place)? Step(DocumentNode node, string step, string rest)
    {
        if (node is MappingNode mapping && mapping.Find(step) is { } entry)
            return (entry.Value, entry.Value is ScalarNode { IsNull: false } scalar ? scalar.Span : entry.Key.Span);
        if (node is not SequenceNode sequence)
            return null;
        var named = sequence.Items.OfType<ScalarNode>().FirstOrDefault(item => string.Equals(item.Value, rest, StringComparison.Ordinal));
        if (named is not null)
            return (named, named.Span);
        var isIndex = int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < sequence.Items.Length;
        return isIndex ? (sequence.Items[index], sequence.Items[index].Span) : null;
    }
}
