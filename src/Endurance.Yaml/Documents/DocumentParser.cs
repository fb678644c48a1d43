using System.Collections.Immutable;
using Endurance.Yaml.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using static System.FormattableString;

namespace Endurance.Yaml.Documents;

/// <summary>Builds the node tree from YAML events; refuses what could make a small file large or a value ambiguous.</summary>
internal sealed class DocumentParser
{
    private const int DeepestNesting = 64;

    /// <summary>Entries of one mapping or list, far more than any aircraft has parts: what checks them all against each other stays quick.</summary>
    private const int MostEntries = 2000;

    private readonly SourceText _source;
    private readonly DiagnosticList _diagnostics;
    private readonly Parser _parser;

    // Where the outermost [ or { now open begins: the scanner runs ahead, so that inner ones are less sure.
    private Mark? _openFlow;

    private DocumentParser(SourceText source, DiagnosticList diagnostics)
    {
        _source = source;
        _diagnostics = diagnostics;
        _parser = new Parser(new StringReader(source.Text));
    }

    /// <returns><see langword="null"/> after a diagnostic that ends the pass.</returns>
    public static ScenarioDocument? Parse(SourceText source, DiagnosticList diagnostics)
    {
        try
        {
            return new DocumentParser(source, diagnostics).ParseDocument();
        }
        catch (ScanEndedException)
        {
            return null;
        }
    }

    private ScenarioDocument? ParseDocument()
    {
        MoveNext();
        if (MoveNext() is not DocumentStart)
            return Empty();
        MoveNext();
        var root = ParseNode(1);
        MoveNext();
        if (MoveNext() is DocumentStart second)
            _diagnostics.Error("second-document", SpanOf(second.Start, second.End), "a second YAML document begins here", "one scenario a file");
        switch (root)
        {
            case MappingNode mapping:
                return new ScenarioDocument(_source, mapping);
            case ScalarNode { IsNull: true }:
                return Empty();
            case RefusedNode:
                return null;
            default:
                _diagnostics.Error("wrong-shape", root.Span, $"the file holds {root.Shape}, not a scenario", "keys with values, beginning with `endurance: 1`");
                return null;
        }
    }

    private ScenarioDocument? Empty()
    {
        _diagnostics.Error(
            "empty-file", SourceSpan.Nowhere with { Source = _source.Index }, "the file is empty",
            _source.Index == 0 ? "a scenario, beginning with `endurance: 1`" : "sections and keys of the scenario that differ");
        return null;
    }

    private DocumentNode ParseNode(int depth)
    {
        if (depth > DeepestNesting)
        {
            _diagnostics.Error("nested-too-deep", SpanOf(Event.Start, Event.End), $"values are nested more than {DeepestNesting} deep", "a scenario is nested about 5 deep");
            throw new ScanEndedException();
        }

        switch (Event)
        {
            case AnchorAlias alias:
                return Refused("alias-refused", SpanOf(alias.Start, alias.End), "aliases are not read: every value stands where it is used");
            case Scalar scalar:
                RefuseProperties(scalar);
                return ScalarOf(scalar);
            case SequenceStart sequence:
                RefuseProperties(sequence);
                return ParseSequence(sequence, depth);
            case MappingStart mapping:
                RefuseProperties(mapping);
                return ParseMapping(mapping, depth);
            default:
                return Refused("yaml-syntax", SpanOf(Event.Start, Event.End), "a value was expected here");
        }
    }

    private SequenceNode ParseSequence(SequenceStart start, int depth)
    {
        var opens = Open(start.Style == SequenceStyle.Flow, start.Start);
        var items = ImmutableArray.CreateBuilder<DocumentNode>();
        var entries = 0;
        while (MoveNext() is not SequenceEnd)
        {
            RefuseMore(++entries);
            var item = ParseNode(depth + 1);
            if (items.Count > 0 && DecimalComma.Joined(_source, items[^1], item) is { } joined)
                items[^1] = joined;
            else
                items.Add(item);
        }

        Close(opens);
        return new SequenceNode(SpanOf(start.Start, Event.End), items.ToImmutable());
    }

    private MappingNode ParseMapping(MappingStart start, int depth)
    {
        var opens = Open(start.Style == MappingStyle.Flow, start.Start);
        var entries = ImmutableArray.CreateBuilder<MappingEntry>();
        var first = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        var count = 0;
        while (MoveNext() is not MappingEnd)
        {
            RefuseMore(++count);
            var key = ParseNode(depth + 1);
            MoveNext();
            var value = ParseNode(depth + 1);
            if (key is not ScalarNode name)
            {
                if (key is not RefusedNode)
                    _diagnostics.Error("wrong-shape", key.Span, $"a key is a word, not {key.Shape}", "a key such as `bus`; text that begins with [ or { needs quotes");
                continue;
            }

            if (entries.Count > 0 && value is ScalarNode { IsNull: true } && DecimalComma.Joined(_source, entries[^1].Value, name) is { } joined)
                entries[^1] = entries[^1] with { Value = joined };
            else if (first.TryAdd(name.Value, name.Span))
                entries.Add(new MappingEntry(name, value));
            else
                _diagnostics.Error("duplicate-key", name.Span, Invariant($"{Quoted.Of(name.Value)} is written twice; the first is on line {first[name.Value].Line}, column {first[name.Value].Column}"), "each key once");
        }

        Close(opens);
        return new MappingNode(SpanOf(start.Start, Event.End), entries.ToImmutable());
    }

    private void RefuseMore(int entries)
    {
        if (entries <= MostEntries)
            return;
        _diagnostics.Error("too-many-entries", SpanOf(Event.Start, Event.End), $"more than {MostEntries} entries stand in one place", "a scenario has a few dozen");
        throw new ScanEndedException();
    }

    private bool Open(bool isFlow, Mark start)
    {
        if (!isFlow || _openFlow is not null)
            return false;
        _openFlow = start;
        return true;
    }

    private void Close(bool opens) => _openFlow = opens ? null : _openFlow;

    private ScalarNode ScalarOf(Scalar scalar)
    {
        var isPlain = scalar.Style == ScalarStyle.Plain;
        var span = SpanOf(scalar.Start, scalar.End);
        if (isPlain && scalar.Start.Line == scalar.End.Line)
            span = span with { Length = Math.Max(1, Math.Min(span.Length, scalar.Value.Length)) };
        return new ScalarNode(span, scalar.Value, isPlain);
    }

    private void RefuseProperties(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
            Refused("alias-refused", PropertySpan(node, '&', node.Anchor.Value.Length + 1), "anchors are not read: every value stands where it is used");
        if (!node.Tag.IsEmpty && !node.Tag.IsNonSpecific)
            Refused("tag-refused", PropertySpan(node, '!', 1), "tags are not read: what a value is follows from its key");
    }

    private SourceSpan PropertySpan(NodeEvent node, char mark, int length)
    {
        var span = SpanOf(node.Start, node.End);
        var line = _source.Line(span.Line);
        var at = span.Column <= line.Length ? line.IndexOf(mark, Math.Max(0, span.Column - 1)) : -1;
        return at < 0 ? span with { Length = 1 } : new SourceSpan(span.Line, at + 1, length, span.Source);
    }

    private RefusedNode Refused(string code, SourceSpan span, string message)
    {
        _diagnostics.Error(code, span, message, null);
        return new RefusedNode(span);
    }

    private ParsingEvent Event => _parser.Current!;

    private ParsingEvent MoveNext()
    {
        try
        {
            if (_parser.MoveNext() && _parser.Current is not null)
                return _parser.Current;
        }
        catch (YamlException fault)
        {
            if (!(YamlFault.IsUnclosed(fault.Message) && ReportUnclosed()))
                _diagnostics.Error("yaml-syntax", SpanOf(fault.Start, fault.End), "this is not valid YAML: " + YamlFault.InWords(fault.Message), null);
            throw new ScanEndedException();
        }
        catch (Exception fault) when (fault is ArgumentException or InvalidOperationException or FormatException or OverflowException or IndexOutOfRangeException)
        {
            // The scanner itself trips over a few malformed texts; to a user they are one more syntax error.
            var end = _parser.Current?.End ?? Mark.Empty;
            if (!ReportUnclosed())
                _diagnostics.Error("yaml-syntax", SpanOf(end, end), "this is not valid YAML after this point", null);
        }

        throw new ScanEndedException();
    }

    private bool ReportUnclosed()
    {
        if (_openFlow is not { } open)
            return false;
        var span = SpanOf(open, open);
        var bracket = _source.Line(span.Line)[span.Column - 1];
        _diagnostics.Error("yaml-syntax", span, $"this is not valid YAML: what `{bracket}` opens here is not closed, or a comma is missing in it", $"a `{(bracket == '[' ? ']' : '}')}` for each `{bracket}`");
        return true;
    }

    private SourceSpan SpanOf(Mark start, Mark end)
    {
        var line = Math.Clamp((int)start.Line, 1, _source.Lines.Length);
        var width = _source.Line(line).Length;
        var column = line == start.Line ? Math.Clamp((int)start.Column, 1, width + 1) : width + 1;
        var length = end.Line == start.Line ? (int)(end.Column - start.Column) : width - column + 1;
        return new SourceSpan(line, column, Math.Clamp(length, 1, Math.Max(1, width - column + 1)), _source.Index);
    }

    /// <summary>Ends the pass after its diagnostic has been written down; never leaves this class.</summary>
    private sealed class ScanEndedException : Exception;
}
