using Endurance.Findings;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Units;

namespace Endurance.Yaml.Binding;

/// <summary>What the binders of one reading share: where faults and assumptions go.</summary>
internal sealed class Reading(ScenarioDocument document, DiagnosticList diagnostics)
{
    public ScenarioDocument Document { get; } = document;

    public DiagnosticList Diagnostics { get; } = diagnostics;

    public List<Assumption> Assumptions { get; } = [];

    public void Assume(string part, string text, Origin origin = Origin.Default, string? source = null) =>
        Assumptions.Add(new Assumption(part, text, origin, source));

    /// <summary>A quantity in SI; <see langword="null"/> after a diagnostic.</summary>
    public double? Quantity(DocumentNode node, SourceSpan place, string key, QuantityRange range)
    {
        if (ScalarAt(node, place, key, QuantityReader.Expected(range)) is not { } scalar)
            return null;
        var reading = QuantityReader.Read(scalar.Value, range);
        if (reading.Fault is { } fault)
            Diagnostics.Error(fault.Code, Narrowed(scalar, fault.At), fault.Message, fault.Expected, fault.Nearest);
        return reading.Value;
    }

    /// <summary>A scalar with something in it; <see langword="null"/> after a diagnostic.</summary>
    public ScalarNode? ScalarAt(DocumentNode node, SourceSpan place, string key, string form)
    {
        if (node is ScalarNode { IsNull: false } scalar)
        {
            if (!scalar.Value.Any(IsUnprintable))
                return scalar;
            Diagnostics.Error("control-character", place, $"`{key}` holds invisible control characters: {Quoted.Of(scalar.Value)}", "printable text");
            return null;
        }

        if (node is ScalarNode)
            Diagnostics.Error("missing-value", place, $"`{key}` has no value", form);
        else
            WrongShape(node, place, $"`{key}`", form);
        return null;
    }

    public void WrongShape(DocumentNode node, SourceSpan place, string what, string form)
    {
        if (node is not RefusedNode)
            Diagnostics.Error("wrong-shape", place, $"{what} is {node.Shape}", form);
    }

    // Escapes in quotes can spell what the text itself may not hold; direction marks could reorder a report.
    private static bool IsUnprintable(char character) => char.IsControl(character) || character is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>The place from an index of the scalar's text on; the whole scalar when quotes shift its characters.</summary>
    private static SourceSpan Narrowed(ScalarNode scalar, int at)
    {
        var fits = scalar.IsPlain && at > 0 && at < scalar.Span.Length && scalar.Value.Length == scalar.Span.Length;
        return fits ? scalar.Span with { Column = scalar.Span.Column + at, Length = scalar.Span.Length - at } : scalar.Span;
    }
}
