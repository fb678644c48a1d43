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

    public static KnownKey Text(string name, string form) => new(name, form);

    public static KnownKey Required(string name, string form) => new(name, form) { IsRequired = true };

    public static KnownKey Quantity(string name, QuantityRange range) => new(name, QuantityReader.Expected(range)) { Range = range };

    public static KnownKey RequiredQuantity(string name, QuantityRange range) => Quantity(name, range) with { IsRequired = true };
}
