using Endurance.Library;
using Endurance.Yaml.Keys;
using static Endurance.Fuzz.Draw;

namespace Endurance.Fuzz;

/// <summary>Batteries of every kind as a scenario writes them.</summary>
/// <param name="draw">Decides.</param>
/// <param name="scale">1 in a 14 V system, 2 in a 28 V one.</param>
internal sealed class BatteryText(Draw draw, double scale)
{
    private static readonly Section Keys = BatteryKeys.Battery;

    /// <summary>Cells of the battery drawn last, as its chemistry has them.</summary>
    private int cells;

    public string Of(string bus)
    {
        cells = 6;
        return Mapping(Keyed(bus));
    }

    private IEnumerable<string?> Keyed(string bus) =>
    [
        $"bus: {bus}",
        .. Life(),
        draw.OneIn(2) ? draw.Pair(Keys, "charge", 20, 100) : null,
        draw.OneIn(2) ? draw.Pair(Keys, "health", 50, 100) : null,
        draw.Sometimes(4, Keys, "temperature", -20, 45),
        draw.Sometimes(4, Keys, "charge_efficiency", 70, 100),
        draw.Sometimes(3, Keys, "charge_acceptance", 0.2, 3),
        draw.Sometimes(6, Keys, "capacity_factor", 50, 110),
        draw.Sometimes(6, Keys, "resistance_factor", 0.5, 3),
        .. Extras(),
    ];

    private IEnumerable<string?> Life() => draw.Next(6) switch
    {
        0 => [Chemistry("flooded", "agm", "gel", "nicd", "lifepo4"), .. Rated()],
        1 => [Chemistry("flooded", "agm"), $"ratings: [[20 h, {Text(20, "Ah")}], [1 h, {Text(draw.Between(8, 19), "Ah")}]]"],
        2 => [Chemistry("flooded", "agm", "gel"), Points()],
        _ => [.. Rated(), draw.Pair(Keys, "peukert", 1, 1.35), Emf(), Resistance()],
    };

    private string Chemistry(params string[] words)
    {
        var word = draw.Any(words);
        cells = (int)scale * ChemistryTable.All.Single(values => string.Equals(ChemistryTable.Word(values.Chemistry), word, StringComparison.Ordinal)).Cells.Value;
        return $"chemistry: {word}";
    }

    private IEnumerable<string?> Rated() => [draw.Pair(Keys, "capacity", 2, 40), $"rate: {draw.Any("20 h", "10 h", "5 h", "1 h")}"];

    private string Points()
    {
        // Peukert's law with an exponent of its own, so that the points fit together.
        var exponent = draw.Between(1, 1.35);
        var slowest = draw.Between(0.3, 2);
        double Minutes(double times) => 1200 / Math.Pow(times, exponent);
        string Point(double times) => $"{{current: {Text(slowest * times, "A")}, lasts: {Text(Minutes(times), "min")}, to: {Text(10.5 * scale, "V")}}}";
        return $"discharge_points: [{Point(1)}, {Point(draw.Between(2, 4))}, {Point(draw.Between(6, 14))}]";
    }

    private string Emf()
    {
        var volts = draw.Between(9, 11) * scale;
        var rows = new List<string> { $"[0 %, {Text(volts, "V")}]" };
        for (var i = draw.Next(4); i > 0; i--)
        {
            volts += draw.OneIn(4) ? 0 : draw.Between(0, 1) * scale;
            rows.Add($"[{Text((100.0 / (i + 1)) - draw.Between(0, 5), "%")}, {Text(volts, "V")}]");
        }

        rows.Add($"[100 %, {Text(volts + (draw.Between(0.1, 1) * scale), "V")}]");
        return $"emf: [{string.Join(", ", rows)}]";
    }

    private string Resistance() => draw.OneIn(2)
        ? $"resistance: {Text(draw.OneIn(8) ? Math.Pow(10, draw.Between(-3, 5)) : draw.Between(5, 60), "mohm")}"
        : $"resistance: [[0 %, {Text(draw.Between(20, 90), "mohm")}], [{Text(draw.Between(10, 60), "%")}, {Text(draw.Between(8, 40), "mohm")}], [100 %, {Text(draw.Between(6, 30), "mohm")}]]";

    private IEnumerable<string?> Extras() =>
    [
        draw.OneIn(4) ? "capacity_model: kinetic" : null,
        draw.OneIn(8) ? $"kinetic: {Mapping(draw.Pair(BatteryKeys.Kinetic, "available", 20, 80), draw.Pair(BatteryKeys.Kinetic, "rate", 0.1, 5), draw.Pair(BatteryKeys.Kinetic, "capacity", 2, 40))}" : null,
        draw.OneIn(4) ? $"polarisation: [{string.Join(", ", Enumerable.Range(0, 1 + draw.Next(2)).Select(_ => Pair()))}]" : null,
        draw.OneIn(4) ? $"protection: {Protection()}" : null,
        draw.OneIn(3) ? $"cells: {cells}" : null,
    ];

    private string Pair() => Mapping(draw.Pair(BatteryKeys.Polarisation, "resistance", 0.002, 0.03), draw.Pair(BatteryKeys.Polarisation, "time", 1, 600));

    private string Protection()
    {
        var keys = BatteryKeys.Protection;
        return Mapping(
            draw.Pair(keys, "opens_below", 8 * scale, 11.5 * scale),
            draw.Sometimes(2, keys, "opens_above", 3, 60),
            draw.Sometimes(3, keys, "no_charge_below", -10, 10),
            draw.Sometimes(2, keys, "recloses_above", 11.6 * scale, 13.5 * scale));
    }
}
