using Endurance.Yaml.Units;

namespace Endurance.Yaml.Keys;

/// <summary>A key that a section may have.</summary>
/// <param name="Name">As files write it.</param>
/// <param name="Form">What its value looks like, for messages.</param>
internal sealed record KnownKey(string Name, string Form)
{
    public bool IsRequired { get; init; }

    /// <summary>Kind and limits of a quantity; <see langword="null"/> for every other value.</summary>
    public QuantityRange? Range { get; init; }

    /// <summary>What may stand behind it.</summary>
    public ValueShape Shape { get; init; } = Shapes.Text;

    public static KnownKey Text(string name, string form) => new(name, form);

    public static KnownKey Of(string name, string form, ValueShape shape) => new(name, form) { Shape = shape };

    /// <summary>One of these words and nothing else.</summary>
    public static KnownKey Word(string name, params string[] words) =>
        Of(name, words.Length == 1 ? words[0] : $"{string.Join(", ", words[..^1])} or {words[^1]}", Shapes.Word(words));

    public static KnownKey Required(string name, string form) => new(name, form) { IsRequired = true };

    public static KnownKey Quantity(string name, QuantityRange range) => new(name, QuantityReader.Expected(range)) { Range = range, Shape = new Measured(range) };

    public static KnownKey RequiredQuantity(string name, QuantityRange range) => Quantity(name, range) with { IsRequired = true };
}
