using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Endurance.Yaml.Keys;
using Endurance.Yaml.Schema;

namespace Endurance.Yaml;

/// <summary>A JSON Schema of the scenario file, from the tables that the reader itself goes by.</summary>
public static class ScenarioSchema
{
    /// <summary>The schema, of draft 2020-12, indented, with a line feed at its end.</summary>
    /// <remarks>It holds what each key alone decides. How keys and names go together, and the limits of quantities, are for the reader.</remarks>
    /// <param name="explanation">What a key means, in a few sentences; <see langword="null"/> where nothing is known.</param>
    public static string Write(Func<string, string?> explanation)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(stream, options))
            new SchemaWriter(explanation).Scenario(ScenarioKeys.Scenario).WriteTo(json);

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }
}
