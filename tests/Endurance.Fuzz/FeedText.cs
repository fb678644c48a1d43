using Endurance.Yaml.Keys;
using static Endurance.Fuzz.Draw;

namespace Endurance.Fuzz;

/// <summary>Feeds, and the parts that loads share with them, as a scenario writes them.</summary>
/// <param name="draw">Decides.</param>
/// <param name="scale">1 in a 14 V system, 2 in a 28 V one.</param>
/// <param name="buses">Names of all buses.</param>
/// <param name="grounds">Names of all ground points.</param>
internal sealed class FeedText(Draw draw, double scale, string[] buses, string[] grounds)
{
    private const string NamedDiode = "steering";

    /// <summary>The top-level entry that feeds may name.</summary>
    public static string NamedDiodes => $"diodes:\n  {NamedDiode}: {{kind: schottky, forward: [[1 A, 0.35 V], [15 A, 0.52 V]], heat_path: 3 K/W}}\n";

    /// <summary>A feed with the contacts it has, of which a timeline may open each.</summary>
    public (string Text, string[] Contacts, bool HasDiode) Of(string from, string to)
    {
        var hasDiode = draw.OneIn(3);
        var contacts = new List<string>();
        string? Contact(string name, int rarity, Func<string> text)
        {
            if (!draw.OneIn(rarity))
                return null;
            contacts.Add(name);
            return $"{name}: {text()}";
        }

        var text = Mapping(
            $"from: {from}",
            $"to: {to}",
            hasDiode ? $"diode: {Diode()}" : null,
            hasDiode && draw.OneIn(3) ? null : $"wire: {Wire()}",
            Contact("contactor", 6, Contactor),
            Contact("switch", 6, Switch),
            Contact("breaker", 4, () => Protection(FeedKeys.Breaker)),
            draw.OneIn(8) ? $"fuse: {Protection(FeedKeys.Fuse)}" : null,
            draw.OneIn(10) ? $"fusible_link: {Protection(FeedKeys.FusibleLink)}" : null,
            draw.OneIn(10) ? $"resistor: {Mapping(draw.Pair(FeedKeys.Resistor, "resistance", 0.01, 3), draw.Sometimes(2, FeedKeys.Resistor, "rated", 1, 50))}" : null,
            draw.Sometimes(10, FeedKeys.Feed, "shunt", 0.0001, 0.001),
            draw.OneIn(6) ? $"return: {Return()}" : null);
        return (text, [.. contacts], hasDiode);
    }

    public string Diode() => draw.Next(8) switch
    {
        0 => NamedDiode,
        1 => draw.Any("silicon_3a", "silicon_12a", "bridge_leg", "bridge_two_legs", "schottky_3a", "schottky_8a", "schottky_15a", "ideal_controller_7a"),
        2 => Mapping("kind: ideal_controller", draw.Pair(FeedKeys.Diode, "on_resistance", 0.002, 0.02), draw.OneIn(2) ? "regulated_drop: 0 mV" : draw.Pair(FeedKeys.Diode, "regulated_drop", 0.01, 0.04)),
        3 => Mapping("kind: silicon", "forward: [[0.1 A, 0.62 V], [10 A, 0.95 V]]", draw.Sometimes(2, FeedKeys.Diode, "heat_path", 1, 8)),
        _ => Mapping(
            $"kind: {draw.Any("schottky", "silicon")}",
            draw.Pair(FeedKeys.Diode, "saturation_current", 1e-9, 1e-4),
            draw.Pair(FeedKeys.Diode, "ideality", 1, 2),
            draw.Pair(FeedKeys.Diode, "series_resistance", 0.001, 0.02),
            draw.Sometimes(2, FeedKeys.Diode, "temperature", 0, 80),
            draw.Sometimes(4, FeedKeys.Diode, "leakage", 0, 0.001),
            draw.Sometimes(3, FeedKeys.Diode, "heat_path", 1, 8),
            draw.Sometimes(4, FeedKeys.Diode, "short_resistance", 0.0005, 0.01),
            draw.Sometimes(4, FeedKeys.Diode, "max_junction", 100, 175)),
    };

    public string Wire() => draw.OneIn(2)
        ? Mapping($"gauge: {draw.Any("22", "18", "14", "10", "4", "2/0")} AWG", draw.Pair(FeedKeys.Wire, "length", 0.3, 6), draw.Sometimes(3, FeedKeys.Wire, "temperature", 0, 90))
        : Mapping(draw.Pair(FeedKeys.Wire, "resistance", 0.0005, 0.05));

    public string Switch() => Mapping($"state: {State}", draw.Sometimes(2, FeedKeys.Switch, "contact", 0.0005, 0.005));

    /// <summary>A rating, with a thermal model in two of three.</summary>
    public string Protection(Section keys) => Mapping(
        draw.Pair(keys, "rated", 2, 60),
        draw.Sometimes(2, keys, "resistance", 0.001, 0.01),
        draw.Sometimes(3, keys, "factor", 1, 1.5),
        draw.Sometimes(3, keys, "time_constant", 0.5, 100));

    public string Return() => Mapping(
        grounds.Length > 0 && draw.OneIn(2) ? $"to: {draw.Any(grounds)}" : null,
        draw.Pair(FeedKeys.Return, "resistance", 0.0005, 0.02));

    private string State => draw.OneIn(4) ? "open" : "closed";

    private string Contactor()
    {
        var keys = FeedKeys.Contactor;
        var hasCoil = !draw.OneIn(4);
        return Mapping(
            $"state: {State}",
            hasCoil ? $"coil: {(draw.OneIn(2) ? Text(draw.Between(0.1, 2), "A") : Text(draw.Between(6, 60) * scale, "ohm"))}" : null,
            hasCoil && draw.OneIn(4) ? $"coil_bus: {draw.Any(buses)}" : null,
            draw.Sometimes(2, keys, "contact", 0.0002, 0.002),
            hasCoil ? draw.Sometimes(3, keys, "pull_in", 1, 5) : null,
            hasCoil && draw.OneIn(2) ? $"{draw.Pair(keys, "pulls_in_above", 7 * scale, 11 * scale)}, {draw.Pair(keys, "drops_out_below", 2 * scale, 6.9 * scale)}" : null,
            draw.OneIn(5) ? "contacts: normally_closed" : null);
    }
}
