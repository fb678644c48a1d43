using System.Text;
using System.Text.RegularExpressions;
using Endurance.Yaml.Keys;

namespace Endurance.Fuzz;

/// <summary>Texts that look like scenarios: drawn networks, shipped files and soups of keys, with damage of every kind.</summary>
internal static partial class DamagedText
{
    private static readonly Section[] Sections =
    [
        ScenarioKeys.Scenario, BatteryKeys.Battery, PartKeys.Alternator, PartKeys.Bus, FeedKeys.Feed, FeedKeys.Diode, FeedKeys.Contactor, FeedKeys.Wire, LoadKeys.Load,
        SupplyKeys.Charger, SupplyKeys.Selector, SupplyKeys.Warning, ScenarioKeys.FailureCase, ScenarioKeys.Step, ScenarioKeys.When, ScenarioKeys.Requirement, StudyKeys.Tolerance, StudyKeys.Offer,
    ];

    private static readonly string[] Numbers =
        ["0", "-1", "1e308", "1e-308", "-0", "00", "1e999", ".5", "5.", "+3", "0x1F", "1_000", "NaN", ".inf", "-.inf", "1,5", "99999999999999999999", "1e5", "010", "1:30"];

    private static readonly string[] Units = ["V", "A", "W", "ohm", "mohm", "Ah", "h", "min", "s", "%", "degC", "degF", "AWG", "ft", "K/W", "", "v", "volts", "\u03A9", "\u00B5A", "Vs", "V V"];

    private static readonly string[] Values =
        ["~", "null", "true", "[]", "{}", "''", "\"\\u0000\"", "[[0 %, 11 V], [100 %, 12 V]]", "[[0 %, 11 V]]", "{kind: schottky}", "[a, [b, {c: d}]]", "*a", "&a 1 V", "!!str 5 V", "!x 3 A", "|\n    text", ">-\n    text", "- 1", "? a", "@", "`", "%", "2026-02-30"];

    private static readonly string[] Lines =
        ["<<: *a", "a: &a {b: c}", "\tbuses: {}", "...", "---", "%YAML 1.2", "? complex", ": value", "# comment", "-", "\u00A0x: 1", "\u2028", "key : value", "key:value", "\"unclosed", "'", "{", "]", "buses: {main_bus: {}, main_bus: {}}", "\u202Eabc: 1", "\uD83D\uDE80: 1"];

    /// <param name="seed">Decides.</param>
    /// <param name="shipped">Whole scenario files to damage; at least one.</param>
    public static string Of(int seed, IReadOnlyList<string> shipped)
    {
        var draw = new Draw(seed, isWild: true);
        var text = draw.Next(5) switch
        {
            0 => Soup(draw),
            1 or 2 => NetworkText.Of(seed),
            _ => shipped[draw.Next(shipped.Count)],
        };
        for (var i = draw.Next(4); i > 0; i--)
            text = Damage(text, draw);
        return text;
    }

    private static string Damage(string text, Draw draw) => draw.Next(10) switch
    {
        0 => text[..draw.Next(text.Length + 1)],
        1 or 2 => Replaced(text, Number(), draw, _ => draw.Any(Numbers)),
        3 => Replaced(text, Quantity(), draw, _ => $"{draw.Any(Numbers)} {draw.Any(Units)}"),
        4 => Replaced(text, Unit(), draw, _ => draw.Any(Units)),
        5 => Replaced(text, Key(), draw, match => Near(match.Value, draw)),
        6 => Replaced(text, Value(), draw, _ => draw.Any(Values)),
        7 => Inserted(text, draw.Any(Lines) + draw.Any("\n", "\r\n", "\r", "", "\u0085"), draw),
        _ => Reordered(text, draw),
    };

    private static string Replaced(string text, Regex pattern, Draw draw, MatchEvaluator replacement)
    {
        var count = pattern.Count(text);
        return count == 0 ? text : pattern.Replace(text, replacement, 1, pattern.Matches(text)[draw.Next(count)].Index);
    }

    private static string Inserted(string text, string piece, Draw draw)
    {
        var at = draw.OneIn(3) ? draw.Next(text.Length + 1) : text.IndexOf('\n', draw.Next(text.Length + 1)) + 1;
        return text.Insert(at, piece);
    }

    private static string Reordered(string text, Draw draw)
    {
        var lines = text.Split('\n').ToList();
        var (a, b) = (draw.Next(lines.Count), draw.Next(lines.Count));
        switch (draw.Next(4))
        {
            case 0:
                lines.RemoveAt(a);
                break;
            case 1:
                lines.Insert(b, lines[a]);
                break;
            case 2:
                (lines[a], lines[b]) = (lines[b], lines[a]);
                break;
            default:
                lines[a] = new string(' ', draw.Next(6)) + lines[a].TrimStart();
                break;
        }

        return string.Join('\n', lines);
    }

    /// <summary>A key with a letter changed, doubled or left out.</summary>
    private static string Near(string key, Draw draw)
    {
        var at = draw.Next(key.Length);
        return draw.Next(3) switch
        {
            0 => key.Remove(at, 1),
            1 => key.Insert(at, key[at].ToString()),
            _ => key.Insert(at, draw.Any("x", "_", "-", "\u00E9", " ")),
        };
    }

    /// <summary>Any keys of any sections, each with a value that may or may not be of its kind.</summary>
    private static string Soup(Draw draw)
    {
        var text = new StringBuilder("endurance: 1\nsystem: 14 V\n");
        foreach (var top in ScenarioKeys.Scenario.Keys)
        {
            if (draw.OneIn(2))
                text.Append($"{top.Name}:\n  part{draw.Next(3)}: {Mapping(draw, 2)}\n  part{draw.Next(3)}: {Mapping(draw, 2)}\n");
        }

        return text.ToString();
    }

    private static string Mapping(Draw draw, int depth)
    {
        var section = draw.Any(Sections);
        var pairs = Enumerable.Range(0, draw.Next(6)).Select(_ => section.Keys[draw.Next(section.Keys.Length)]).Select(key => $"{key.Name}: {Worth(key, draw, depth)}");
        return $"{{{string.Join(", ", pairs)}}}";
    }

    private static string Worth(KnownKey key, Draw draw, int depth) => draw.Next(5) switch
    {
        0 when depth > 0 => Mapping(draw, depth - 1),
        1 => $"[{draw.Any(Numbers)} {draw.Any(Units)}, part{draw.Next(3)}]",
        2 => $"{draw.Any(Numbers)} {draw.Any(Units)}",
        3 => $"part{draw.Next(3)}",
        _ => key.Range?.Example ?? $"part{draw.Next(3)}",
    };

    [GeneratedRegex(@"\d+(\.\d+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"\d+(\.\d+)? [A-Za-z%/]+", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Quantity();

    [GeneratedRegex(@"(?<=\d )[A-Za-z%/]+", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Unit();

    [GeneratedRegex(@"[a-z_]+(?=:)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Key();

    [GeneratedRegex(@"(?<=: )[^\n,{}\[\]]+", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Value();
}
