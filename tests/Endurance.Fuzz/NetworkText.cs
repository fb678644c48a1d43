using System.Text;
using Endurance.Yaml.Keys;
using static Endurance.Fuzz.Draw;

namespace Endurance.Fuzz;

/// <summary>A scenario of up to 12 buses with parts of every kind and one failure case, wholly decided by its seed.</summary>
internal sealed class NetworkText
{
    private const int MostBuses = 12;

    private readonly StringBuilder text = new();
    private readonly Draw draw;
    private readonly double scale;
    private readonly string[] buses;
    private readonly string[] grounds;
    private readonly FeedText feeds;
    private readonly TimelineText timeline;

    private NetworkText(int seed)
    {
        draw = new Draw(seed, IsWild(seed));
        scale = draw.OneIn(5) ? 2 : 1;
        buses = Names("bus", draw.Next(MostBuses) + 1);
        grounds = Names("ground", draw.OneIn(2) ? 0 : 1 + draw.Next(3));
        feeds = new FeedText(draw, scale, buses, grounds);
        timeline = new TimelineText(draw, scale, buses);
    }

    /// <summary>The text of a seed; in one of four some quantities are extreme.</summary>
    public static string Of(int seed) => new NetworkText(seed).Write();

    /// <summary>Whether some quantities of a seed's text are extreme.</summary>
    public static bool IsWild(int seed) => seed % 4 == 3;

    private string Write()
    {
        text.Append($"endurance: 1\ntitle: drawn\nsystem: {(scale > 1 ? 28 : 14)} V\n");
        text.Append($"{draw.Pair(ScenarioKeys.Scenario, "ambient", -20, 45)}\nhorizon: {draw.Any("30 min", "3 h", "3 h", "8 h")}\n");
        Sources();
        Section("buses", buses, _ => draw.OneIn(3) ? Mapping(draw.Pair(PartKeys.Bus, "cutoff", 8 * scale, 11.5 * scale)) : "{}");
        text.Append(FeedText.NamedDiodes);
        Feeds();
        Section("grounds", grounds, _ => Mapping(draw.Pair(SupplyKeys.Ground, "resistance", 0.0001, 0.005)));
        Loads();
        if (draw.OneIn(3))
        {
            timeline.Warnings = Names("warning", 1 + draw.Next(2));
            Section("low_voltage_warnings", timeline.Warnings, _ => Mapping(
                $"senses: {draw.Any(buses)}", draw.Pair(SupplyKeys.Warning, "below", 10 * scale, 13 * scale), draw.OneIn(2) ? $"for: {draw.Next(60)} s" : null));
        }

        if (timeline.Loads.Length > 0 && draw.OneIn(4))
            text.Append($"landing: {{connect: [{draw.Any(timeline.Loads)}], lasts: 10 min}}\n");
        text.Append(timeline.Write());
        return text.ToString();
    }

    private void Sources()
    {
        timeline.Batteries = Names("battery", 1 + draw.Next(3));
        var batteries = new BatteryText(draw, scale);
        Section("batteries", timeline.Batteries, _ => batteries.Of(draw.Any(buses)));
        timeline.Alternators = Names("alternator", draw.OneIn(2) ? 0 : 1 + draw.Next(2));
        Section("alternators", timeline.Alternators, _ => Alternator());
        timeline.HasEngine = text.ToString().Contains("driven_by", StringComparison.Ordinal);
        if (buses.Length < 2)
            return;
        timeline.Chargers = Names("charger", draw.OneIn(3) ? 1 + draw.Next(2) : 0);
        Section("chargers", timeline.Chargers, _ => Charger());
    }

    private string Alternator()
    {
        var keys = PartKeys.Alternator;
        var isDriven = draw.OneIn(2);
        return Mapping(
            $"bus: {draw.Any(buses)}",
            draw.Pair(keys, "setpoint", 13.4 * scale, 14.8 * scale),
            draw.Pair(keys, "rated", 3, 70),
            draw.Sometimes(2, keys, "droop", 0.001, 0.03),
            isDriven ? "driven_by: engine" : null,
            isDriven ? draw.Sometimes(3, keys, "limit_idle", 2, 20) : null,
            draw.OneIn(6) ? "state: off" : null,
            draw.Sometimes(6, keys, "trips_above", 14.2 * scale, 16.5 * scale),
            draw.OneIn(3) ? $"field: {Mapping($"bus: {draw.Any(buses)}", draw.Pair(PartKeys.Field, "current", 0.5, 4), draw.OneIn(5) ? "switch: off" : null)}" : null);
    }

    private string Charger()
    {
        var keys = SupplyKeys.Charger;
        var from = draw.Next(buses.Length);
        return Mapping(
            $"from: {buses[from]}",
            $"to: {Other(from)}",
            draw.Pair(keys, "output", 12.8 * scale, 14.4 * scale),
            draw.Pair(keys, "limit", 0.5, 20),
            draw.Pair(keys, "efficiency", 60, 98),
            draw.Sometimes(3, keys, "droop", 0.01, 0.1),
            draw.OneIn(2) ? $"{draw.Pair(keys, "cut_in", 12.5 * scale, 13.5 * scale)}, {draw.Pair(keys, "cut_out", 10.5 * scale, 12.4 * scale)}" : null,
            draw.OneIn(6) ? "state: off" : null);
    }

    private void Feeds()
    {
        if (buses.Length < 2)
            return;
        var extra = draw.Next(4);
        timeline.Feeds = Names("feed", buses.Length - 1 + extra);
        Section("feeds", timeline.Feeds, index =>
        {
            // The first ones make a tree, so that most networks hang together; the rest close meshes.
            var (a, b) = index < buses.Length - 1 ? (buses[draw.Next(index + 1)], buses[index + 1]) : Ends();
            var (written, contacts, hasDiode) = draw.OneIn(3) ? feeds.Of(b, a) : feeds.Of(a, b);
            timeline.AddFeed(timeline.Feeds[index], contacts, hasDiode);
            return written;
        });
        if (timeline.Feeds.Length < 2 || !draw.OneIn(5))
            return;
        timeline.Selectors = ["selector"];
        text.Append($"selectors:\n  selector: {{positions: {{one: {timeline.Feeds[0]}, two: {timeline.Feeds[1]}}}, at: {draw.Any("one", "two")}}}\n");
    }

    private (string From, string To) Ends()
    {
        var from = draw.Next(buses.Length);
        return (buses[from], Other(from));
    }

    private void Loads()
    {
        timeline.Loads = Names("load", draw.Next(9));
        var loads = new LoadText(draw, scale, feeds);
        Section("loads", timeline.Loads, index =>
        {
            var bus = draw.Next(buses.Length);
            return loads.Of(buses[bus], buses.Length > 1 ? Other(bus) : null, timeline.Loads[..index]);
        });
    }

    private string Other(int bus) => buses[(bus + 1 + draw.Next(buses.Length - 1)) % buses.Length];

    private void Section(string name, string[] parts, Func<int, string> part)
    {
        if (parts.Length == 0)
            return;
        text.Append($"{name}:\n");
        for (var i = 0; i < parts.Length; i++)
            text.Append($"  {parts[i]}: {part(i)}\n");
    }

    private static string[] Names(string stem, int count) => [.. Enumerable.Range(1, count).Select(i => $"{stem}{i}")];
}
