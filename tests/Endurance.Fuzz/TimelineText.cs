using System.Text;
using static Endurance.Fuzz.Draw;

namespace Endurance.Fuzz;

/// <summary>A failure case with every verb, many steps of it on one instant, as a scenario writes it.</summary>
/// <param name="draw">Decides.</param>
/// <param name="scale">1 in a 14 V system, 2 in a 28 V one.</param>
/// <param name="buses">Names of all buses.</param>
internal sealed class TimelineText(Draw draw, double scale, string[] buses)
{
    private readonly List<string> contacts = [];
    private readonly List<string> diodes = [];

    public string[] Batteries { get; set; } = [];

    public string[] Alternators { get; set; } = [];

    public string[] Chargers { get; set; } = [];

    public string[] Feeds { get; set; } = [];

    public string[] Loads { get; set; } = [];

    public string[] Warnings { get; set; } = [];

    public string[] Selectors { get; set; } = [];

    public bool HasEngine { get; set; }

    public void AddFeed(string name, string[] parts, bool hasDiode)
    {
        contacts.AddRange(parts.Length == 1 ? [name] : parts.Select(part => $"{name}.{part}"));
        if (hasDiode)
            diodes.Add(name);
    }

    public string Write()
    {
        var text = new StringBuilder("failure_cases:\n  drawn:\n    timeline:\n");
        var pile = draw.Any(0, 0, 5, 20);
        var count = draw.OneIn(6) ? 12 : draw.Next(6);
        for (var i = 0; i < count; i++)
        {
            if (Action() is { } action)
                text.Append($"      - {Mapping(Trigger(pile), action, draw.OneIn(5) ? $"lasts: {draw.Any("1 s", "20 s", "5 min", "30 min")}" : null)}\n");
        }

        return text.ToString().EndsWith("timeline:\n", StringComparison.Ordinal) ? "failure_cases:\n  drawn: {timeline: []}\n" : text.ToString();
    }

    private string Trigger(int pile) => draw.Next(6) switch
    {
        0 => $"when: {Mapping($"bus: {draw.Any(buses)}", $"below: {Text(draw.Between(10, 13) * scale, "V")}", draw.OneIn(2) ? $"for: {draw.Any(0, 5, 60)} s" : null)}",
        1 when Warnings.Length > 0 => $"when: {Mapping($"warning: {draw.Any(Warnings)}", draw.OneIn(2) ? $"recognised_after: {draw.Next(5)} min" : null)}",
        2 or 3 => $"at: {pile} min",
        _ => $"at: {Text(Math.Round(draw.Between(0, 120), 1), "min")}",
    };

    private string? Action() => draw.Next(12) switch
    {
        0 => Acts("fail", [.. Batteries, .. Alternators, .. Chargers, .. Warnings]),
        1 => Acts("restore", [.. Batteries, .. Alternators, .. Chargers, .. Feeds]),
        2 => HasEngine ? $"{draw.Any("stop", "start", "idle", "cruise")}: [engine]" : Acts("fail", Alternators),
        3 => Acts("open", [.. contacts]),
        4 => Acts("close", [.. contacts]),
        5 => Acts("short", [.. diodes]),
        6 => Acts("break", Feeds),
        7 => Selectors.Length > 0 ? $"select: {{selector: {draw.Any("one", "two")}}}" : Acts("fail", Alternators),
        8 or 9 => Acts("connect", [.. Loads, .. Alternators, .. Chargers]),
        _ => Acts("shed", [.. Loads, .. Loads, .. Alternators, .. Chargers]),
    };

    private string? Acts(string verb, string[] targets) =>
        targets.Length == 0 ? null : $"{verb}: [{string.Join(", ", Enumerable.Range(0, 1 + draw.Next(2)).Select(_ => draw.Any(targets)).Distinct(StringComparer.Ordinal))}]";
}
