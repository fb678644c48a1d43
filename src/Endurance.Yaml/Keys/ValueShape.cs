using System.Collections.Immutable;
using Endurance.Yaml.Units;

namespace Endurance.Yaml.Keys;

/// <summary>What may stand behind a key, as far as the key alone decides it.</summary>
internal abstract record ValueShape
{
    /// <summary>Whether a word may stand here.</summary>
    public virtual bool Takes(string word) => false;
}

/// <summary>Any text on one line.</summary>
internal sealed record AnyText : ValueShape
{
    public override bool Takes(string word) => true;
}

/// <summary>One out of a list.</summary>
internal sealed record OneWord(ImmutableArray<string> Words) : ValueShape
{
    public override bool Takes(string word) => Words.Contains(word, StringComparer.Ordinal);
}

/// <summary>A number with its unit.</summary>
internal sealed record Measured(QuantityRange Range) : ValueShape;

/// <summary>Text of a fixed form.</summary>
/// <param name="Pattern">A regular expression of ECMA-262.</param>
internal sealed record Patterned(string Pattern) : ValueShape;

/// <summary>Keys with values.</summary>
/// <param name="Of">The keys; a function, so that tables may stand in any order.</param>
internal sealed record Keyed(Func<Section> Of) : ValueShape;

/// <summary>Names, each with a value.</summary>
/// <param name="Value">Behind each name.</param>
/// <param name="AreParts">The names are given to parts or positions; otherwise they refer to something, and may be any text.</param>
internal sealed record ByName(ValueShape Value, bool AreParts = true) : ValueShape;

/// <summary>A list.</summary>
internal sealed record ListOf(ValueShape Item, int Least = 1, int? Most = null) : ValueShape;

/// <summary>A list in which each place has its own kind of value.</summary>
internal sealed record Row(ImmutableArray<ValueShape> Items) : ValueShape;

/// <summary>One of several shapes.</summary>
internal sealed record AnyOf(ImmutableArray<ValueShape> Shapes) : ValueShape
{
    public override bool Takes(string word) => Shapes.Any(shape => shape.Takes(word));
}

/// <summary>Nothing at all behind the key.</summary>
internal sealed record Nothing : ValueShape;

/// <summary>Changes to the scenario: its sections and keys, of which each may be left out, and what has nothing behind it is removed.</summary>
/// <param name="To">The keys that may change.</param>
internal sealed record Changes(Func<Section> To) : ValueShape;
