using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Endurance.Tests.Yaml.Schema;

/// <summary>YAML as an editor hands it to a schema: plain scalars by the core schema of YAML 1.2, section 10.3.2.</summary>
internal static partial class YamlAsJson
{
    public static JsonElement Of(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return JsonSerializer.SerializeToElement(Node(stream.Documents[0].RootNode));
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMappingNode mapping => new JsonObject(mapping.Children.Select(pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Node(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
        YamlScalarNode { Style: ScalarStyle.Plain } plain => Plain(plain.Value ?? ""),
        YamlScalarNode quoted => JsonValue.Create(quoted.Value),
        _ => throw new InvalidOperationException("No scenario holds such a node."),
    };

    private static JsonNode? Plain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Number().IsMatch(text) => JsonValue.Create(double.Parse(text, CultureInfo.InvariantCulture)),
        _ => JsonValue.Create(text),
    };

    [GeneratedRegex("^[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();
}
