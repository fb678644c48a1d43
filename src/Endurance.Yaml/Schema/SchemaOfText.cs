using System.Globalization;
using System.Text.Json.Nodes;
using Endurance.Yaml.Keys;
using Endurance.Yaml.Units;

namespace Endurance.Yaml.Schema;

/// <summary>Writes single values as a schema, for a reader that takes YAML's plain <c>1.15</c> for a number and <c>true</c> for a truth value.</summary>
internal static class SchemaOfText
{
    private const string Number = "[0-9]+(\\.[0-9]*)?|\\.[0-9]+";
    private const string Power = "([eE][+-]?[0-9]+)?";

    public static JsonObject Of(ValueShape shape) => shape switch
    {
        AnyText => new JsonObject { ["type"] = new JsonArray("string", "number", "boolean") },
        OneWord words => new JsonObject { ["enum"] = new JsonArray([.. words.Words.SelectMany(Spellings)]) },
        Measured { Range.Dimension.Units.IsEmpty: true } bare => Bare(bare.Range),
        Measured measured => Quantity(measured.Range),
        Patterned text => Pattern(text.Pattern),
        Nothing => new JsonObject { ["type"] = "null" },
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "Not a single value."),
    };

    /// <summary>What a part may be called.</summary>
    public static JsonObject PartName() => new() { ["pattern"] = "^[\\p{L}\\p{Nd}_-]([\\p{L}\\p{Nd}_ -]*[\\p{L}\\p{Nd}_-])?$", ["maxLength"] = 60 };

    private static JsonObject Pattern(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };

    private static JsonObject Bare(QuantityRange range) => new()
    {
        ["anyOf"] = new JsonArray(
            new JsonObject { ["type"] = "number", ["minimum"] = range.Least, ["maximum"] = range.Most },
            Pattern($"^ *{Sign(range)}({Number}){Power} *$")),
        ["examples"] = new JsonArray(range.Example),
    };

    private static JsonObject Quantity(QuantityRange range)
    {
        var units = string.Join('|', range.Dimension.Units.Select(unit => UnitSymbols.Pattern(unit.Symbol)));
        var schema = Pattern($"^ *{Sign(range)}({Number}){Power} *({units}) *$");
        schema["examples"] = new JsonArray(range.Example);
        return schema;
    }

    /// <summary>A minus is refused where nothing at or below zero is in range; the limits themselves are for the reader, which knows the units.</summary>
    private static string Sign(QuantityRange range) =>
        range.Dimension != Dimension.Temperature && (range.Least > 0 || (range.Least == 0 && !range.IsLeastAllowed)) ? "\\+?" : "[+-]?";

    private static IEnumerable<JsonNode> Spellings(string word)
    {
        if (word is "true" or "false")
            yield return JsonValue.Create(string.Equals(word, "true", StringComparison.Ordinal));
        else if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            yield return JsonValue.Create(number);
        yield return JsonValue.Create(word);
    }
}
