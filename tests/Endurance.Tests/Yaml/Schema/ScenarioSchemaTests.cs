using System.Text.Json;
using Endurance.Findings;
using Endurance.Tests.Reports;
using Endurance.Yaml;
using Endurance.Yaml.Keys;
using Json.Schema;
using YamlDotNet.Core;

namespace Endurance.Tests.Yaml.Schema;

/// <summary>The schema says of a file what the reader says, as far as single keys go.</summary>
public class ScenarioSchemaTests
{
    private static readonly string Text = ScenarioSchema.Write(key => $"About {key}.");
    private static readonly JsonElement Written = JsonDocument.Parse(Text).RootElement;
    private static readonly JsonSchema Schema = JsonSchema.FromText(Text);

    /// <summary>Faults that a key alone decides, so that an editor can mark them.</summary>
    private static readonly string[] OfOneKey =
        ["unknown-key", "missing-unit", "unknown-unit", "wrong-unit", "not-a-quantity", "number-not-finite", "decimal-comma", "unknown-version", "unknown-system", "missing-value"];

    public static TheoryData<string> Shipped => ShippedScenarioTests.Files;

    public static TheoryData<string> Broken => BrokenScenarioTests.Files;

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Scenario_AsShipped_IsValid(string file) => Assert.True(IsValid(File.ReadAllText(Path.Combine(Folders.Scenarios, file))));

    [Fact]
    public void Starter_IsValid() => Assert.True(IsValid(StarterScenario.Text));

    [Theory]
    [MemberData(nameof(Broken))]
    public void Scenario_Broken_IsRefusedForWhatOneKeyDecidesAndAcceptedWhereTheReaderAccepts(string name)
    {
        var read = ScenarioReader.ReadFile(Path.Combine(Folders.Broken, name + ".yaml"));
        if (Validity(name) is not { } valid)
            return;

        if (read.Diagnostics.All(told => told.Severity != Severity.Error))
            Assert.True(valid);
        if (read.Diagnostics.Any(told => told.Severity == Severity.Error && OfOneKey.Contains(told.Code, StringComparer.Ordinal)))
            Assert.False(valid);
    }

    [Theory]
    [InlineData("essential: true", "essential: yes")]
    [InlineData("essential: true", "essentail: true")]
    [InlineData("power: 42 W", "power: 42")]
    [InlineData("power: 42 W", "power: 42 V")]
    [InlineData("power: 42 W", "power: -42 W")]
    [InlineData("power: 42 W", "power: [42 W]")]
    [InlineData("power: 42 W", "power:")]
    [InlineData("system: 14 V", "system: 12 V")]
    [InlineData("endurance: 1", "endurance: 2")]
    [InlineData("gauge: 4 AWG", "gauge: 4")]
    [InlineData("peukert: 1.15", "peukert: 0.5")]
    [InlineData("contactor: {state: closed", "contactor: {state: shut")]
    [InlineData("failure_cases:", "layouts: {other: {feeds: {master: {wires: {resistance: 1 mohm}}}}}\nfailure_cases:")]
    [InlineData("failure_cases:", "layouts: {other: {layouts: {}}}\nfailure_cases:")]
    [InlineData("failure_cases:", "layouts: {other: {landing: {lasts: 10}}}\nfailure_cases:")]
    [InlineData("failure_cases:", "layouts: {other: {loads: {lamp: {bus: main_bus, inputs: [{bus: main_bus, diode: null}]}}}}\nfailure_cases:")]
    [InlineData("[75 %, 85 %, 92 %]", "[75 %, 85 %]")]
    [InlineData("batteries:", "selectors: {source: {positions: [master], at: on}}\nbatteries:")]
    public void Change_ForTheWorse_IsRefused(string sound, string faulty)
    {
        var text = File.ReadAllText(Path.Combine(Folders.Scenarios, "floatplane.yaml"));

        Assert.Contains(sound, text, StringComparison.Ordinal);
        Assert.False(IsValid(text.Replace(sound, faulty, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("power: 42 W", "power: 42W")]
    [InlineData("power: 42 W", "power: 4.2e1 W")]
    [InlineData("power: 42 W", "power: '42 W'")]
    [InlineData("system: 14 V", "system: 14V")]
    [InlineData("peukert: 1.15", "peukert: '1.15'")]
    [InlineData("endurance: 1", "endurance: '1'")]
    [InlineData("mohm", "m\u03A9")]
    [InlineData("degC", "\u00B0C")]
    [InlineData("title: ", "title: 12 # ")]
    [InlineData("failure_cases:", "layouts: {other: {loads: {pitot_heat: null}, feeds: {master: {wire: null, fuse: 10 A}}, requirements: null}}\nfailure_cases:")]
    [InlineData("failure_cases:", "layouts:\nfailure_cases:")]
    public void Change_ThatTheReaderTakes_IsValid(string sound, string other)
    {
        var text = File.ReadAllText(Path.Combine(Folders.Scenarios, "floatplane.yaml"));
        var changed = text.Replace(sound, other, StringComparison.Ordinal);

        Assert.NotEqual(text, changed);
        Assert.NotNull(ScenarioReader.ReadText("changed.yaml", changed).Scenario);
        Assert.True(IsValid(changed));
    }

    [Fact]
    public void Keys_OfEverySection_AreThoseOfTheSchema()
    {
        var sections = typeof(Section).Assembly.GetTypes()
            .SelectMany(type => type.GetFields(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.Public))
            .Where(field => field.FieldType == typeof(Section))
            .Select(field => (Section)field.GetValue(null)!);
        var known = sections.Select(section => Listed(section.Keys.Select(key => key.Name)));
        var written = Written.GetProperty("$defs").EnumerateObject()
            .Where(definition => !definition.Name.StartsWith("changes", StringComparison.Ordinal)).Select(definition => definition.Value)
            .Append(Written).Select(schema => Listed(schema.GetProperty("properties").EnumerateObject().Select(property => property.Name)));

        Assert.Equal(known.Order(StringComparer.Ordinal), written.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Descriptions_BringTheExplanation() => Assert.Equal(
        "About cutoff. Expected: a voltage in mV or V, such as 11.0 V.",
        Written.GetProperty("$defs").GetProperty("bus").GetProperty("properties").GetProperty("cutoff").GetProperty("description").GetString());

    [Fact]
    public void Schema_IsTheSameInEveryCulture() => Assert.Equal(Text, CommaCulture.Run(() => ScenarioSchema.Write(key => $"About {key}.")));

    private static bool IsValid(string yaml) => Schema.Evaluate(YamlAsJson.Of(yaml)).IsValid;

    /// <summary><see langword="null"/> where no JSON can be made of the file, so that an editor tells of the YAML alone.</summary>
    private static bool? Validity(string name)
    {
        try
        {
            return IsValid(File.ReadAllText(Path.Combine(Folders.Broken, name + ".yaml")));
        }
        catch (Exception exception) when (exception is YamlException or InvalidCastException or ArgumentException or InvalidOperationException or JsonException)
        {
            return null;
        }
    }

    private static string Listed(IEnumerable<string> names) => string.Join(' ', names.Order(StringComparer.Ordinal));
}
