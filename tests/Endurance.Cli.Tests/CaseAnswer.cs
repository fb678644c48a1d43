using System.Text.Json;

namespace Endurance.Cli.Tests;

/// <summary>One failure case of <c>run --format json</c>, by the keys that programs rely on.</summary>
internal sealed class CaseAnswer
{
    private readonly JsonElement _case;

    private CaseAnswer(JsonElement answer) => _case = answer;

    /// <summary>Runs a network of the Networks folder and reads one of its cases.</summary>
    public static CaseAnswer Of(string network, string failureCase)
    {
        var run = ProgramRun.InProcess("run", PathOf(network), "--format", "json");
        using var json = JsonDocument.Parse(run.Output);
        return new CaseAnswer(Named(json.RootElement.GetProperty("cases"), failureCase).Clone());
    }

    /// <summary>The whole table of a network, as a user reads it.</summary>
    public static ProgramRun Table(string network) => ProgramRun.InProcess("run", PathOf(network));

    /// <summary>A number of the case itself, or of one of its parts; <see langword="null"/> where the answer is <c>null</c>.</summary>
    public double? Number(string key) => NumberOf(_case.GetProperty(key));

    public double? Number(string kind, string part, string key) => NumberOf(Named(_case.GetProperty(kind), part).GetProperty(key));

    public string? Text(string key) => _case.GetProperty(key).GetString();

    public string? Text(string kind, string part, string key) => Named(_case.GetProperty(kind), part).GetProperty(key).GetString();

    public IEnumerable<string?> Events => _case.GetProperty("events").EnumerateArray().Select(happened => happened.GetProperty("what").GetString());

    private static string PathOf(string network) => Path.Combine(AppContext.BaseDirectory, "Networks", network + ".yaml");

    private static JsonElement Named(JsonElement items, string name) =>
        items.EnumerateArray().Single(item => item.GetProperty("name").GetString() == name);

    private static double? NumberOf(JsonElement value) => value.ValueKind == JsonValueKind.Null ? null : value.GetDouble();
}
