using System.Collections.Immutable;

namespace Endurance.Yaml.Documents;

/// <summary>A piece of a document and its place: a scalar, a mapping, a sequence, or something already reported as wrong.</summary>
internal abstract record DocumentNode(SourceSpan Span)
{
    /// <summary>What a message calls it.</summary>
    public abstract string Shape { get; }
}

/// <param name="Span">Place in the text.</param>
/// <param name="Value">The text, with quotes and escapes resolved.</param>
/// <param name="IsPlain">Written without quotes.</param>
internal sealed record ScalarNode(SourceSpan Span, string Value, bool IsPlain) : DocumentNode(Span)
{
    public override string Shape => IsNull ? "nothing" : "a single value";

    /// <summary>Nothing is written, or one of YAML's words for nothing.</summary>
    public bool IsNull => IsPlain && Value is "" or "~" or "null";
}

internal sealed record MappingNode(SourceSpan Span, ImmutableArray<MappingEntry> Entries) : DocumentNode(Span)
{
    public override string Shape => "keys with values";

    public MappingEntry? Find(string key) => Entries.FirstOrDefault(entry => string.Equals(entry.Key.Value, key, StringComparison.Ordinal));
}

internal sealed record MappingEntry(ScalarNode Key, DocumentNode Value);

internal sealed record SequenceNode(SourceSpan Span, ImmutableArray<DocumentNode> Items) : DocumentNode(Span)
{
    public override string Shape => "a list";
}

/// <summary>Stands where something was refused with a diagnostic of its own; nothing more is said about it.</summary>
internal sealed record RefusedNode(SourceSpan Span) : DocumentNode(Span)
{
    public override string Shape => "something refused";
}
