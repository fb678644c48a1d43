using System.Text.Json.Nodes;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Schema;

/// <summary>Writes tables of keys as a schema: a definition for each table, and a second one for what a layout may change in it.</summary>
internal sealed class SchemaWriter(Func<string, string?> explanation)
{
    private readonly JsonObject _definitions = [];

    /// <summary>The whole schema.</summary>
    public JsonObject Scenario(Section section)
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Endurance scenario",
            ["description"] = "The wiring of a light aircraft, its failure cases and requirements. What keys and names must have to do with each other, `endurance check` tells.",
        };
        foreach (var (name, value) in Properties(section, Value).ToArray())
            schema[name] = value?.DeepClone();
        schema["$defs"] = _definitions;
        return schema;
    }

    private JsonObject Properties(Section section, Func<ValueShape, JsonObject> value)
    {
        var properties = new JsonObject();
        foreach (var key in section.Keys)
            properties[key.Name] = Described(key, value(key.Shape));
        var schema = new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
        var required = section.Keys.Where(key => key.IsRequired).Select(key => key.Name).ToArray();
        if (required.Length > 0)
            schema["required"] = Texts(required);
        return schema;
    }

    private JsonObject Described(KnownKey key, JsonObject value)
    {
        value["description"] = explanation(key.Name) is { } meaning ? $"{meaning} Expected: {key.Form}." : $"Expected: {key.Form}.";
        return value;
    }

    private JsonObject Value(ValueShape shape) => shape switch
    {
        Keyed keyed => Reference(Name(keyed.Of()), () => Properties(keyed.Of(), Value)),
        ByName named => Names(named, Value),
        Row row => new JsonObject
        {
            ["type"] = "array",
            ["prefixItems"] = new JsonArray([.. row.Items.Select(Value)]),
            ["minItems"] = row.Items.Length,
            ["maxItems"] = row.Items.Length,
        },
        ListOf list => List(list),
        AnyOf any => new JsonObject { ["anyOf"] = new JsonArray([.. any.Shapes.Select(Value)]) },
        Changes changes => Reference("changes", () => Changed(changes.To(), ChangedLevels)),
        _ => SchemaOfText.Of(shape),
    };

    private JsonObject List(ListOf list)
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = Value(list.Item) };
        if (list.Least > 0)
            schema["minItems"] = list.Least;
        if (list.Most is { } most)
            schema["maxItems"] = most;
        return schema;
    }

    private static JsonObject Names(ByName named, Func<ValueShape, JsonObject> value)
    {
        var schema = new JsonObject { ["type"] = "object", ["additionalProperties"] = value(named.Value) };
        if (named.AreParts)
            schema["propertyNames"] = SchemaOfText.PartName();
        return schema;
    }

    /// <summary>Below a section of the scenario, parts and their keys are merged; deeper values are replaced whole.</summary>
    private const int ChangedLevels = 2;

    /// <summary>Keys that may each be left out, changed or removed; the format version and the layouts themselves belong to the file.</summary>
    private JsonObject Changed(Section section, int levels)
    {
        var some = section with { Keys = [.. section.Keys.Where(key => key.Name is not ("endurance" or "layouts")).Select(key => key with { IsRequired = false })] };
        return Properties(some, shape => Change(shape, levels));
    }

    private JsonObject Change(ValueShape shape, int levels) => shape switch
    {
        Nothing => SchemaOfText.Of(shape),
        AnyOf any => new JsonObject { ["anyOf"] = new JsonArray([.. any.Shapes.Select(one => Change(one, levels))]) },
        Keyed keyed when levels > 0 => OrNothing(Reference($"changes_of_{Name(keyed.Of())}", () => Changed(keyed.Of(), levels - 1))),
        ByName named when levels > 0 => OrNothing(Names(named, one => Change(one, levels - 1))),
        _ => OrNothing(Value(shape)),
    };

    private static JsonObject OrNothing(JsonObject schema) => new() { ["anyOf"] = new JsonArray(schema, SchemaOfText.Of(new Nothing())) };

    /// <summary>A definition is written once, at its first use; it stands in its place before its own values are written.</summary>
    private JsonObject Reference(string name, Func<JsonObject> definition)
    {
        if (!_definitions.ContainsKey(name))
        {
            _definitions[name] = null;
            _definitions[name] = definition();
        }

        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    /// <summary>The kind of a section without its article, as one word.</summary>
    private static string Name(Section section) =>
        section.Kind[(section.Kind.IndexOf(' ', StringComparison.Ordinal) + 1)..].Replace("`", "", StringComparison.Ordinal).Replace(' ', '_').Replace('-', '_');

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)JsonValue.Create(text))]);
}
