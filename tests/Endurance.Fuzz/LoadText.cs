using Endurance.Yaml.Keys;
using static Endurance.Fuzz.Draw;

namespace Endurance.Fuzz;

/// <summary>Loads as a scenario writes them.</summary>
/// <param name="draw">Decides.</param>
/// <param name="scale">1 in a 14 V system, 2 in a 28 V one.</param>
/// <param name="feeds">Writes the conductors.</param>
internal sealed class LoadText(Draw draw, double scale, FeedText feeds)
{
    private static readonly Section Keys = LoadKeys.Load;

    /// <param name="bus">Name of its bus.</param>
    /// <param name="other">Name of another bus, for a second input; <see langword="null"/>: there is none.</param>
    /// <param name="earlier">Loads written before it, which it may need.</param>
    public string Of(string bus, string? other, string[] earlier)
    {
        var hasInputs = other is not null && draw.OneIn(7);
        var minimum = draw.Between(7, 11.5) * scale;
        var hasMinimum = !draw.OneIn(3);
        return Mapping(
        [
            hasInputs ? $"inputs: [{{bus: {bus}, diode: {feeds.Diode()}}}, {{bus: {other}, diode: {feeds.Diode()}}}]" : $"bus: {bus}",
            Demand(),
            hasMinimum ? $"minimum: {Text(minimum, "V")}" : null,
            hasMinimum && draw.OneIn(3) ? $"restart: {Text(minimum + (draw.Between(0, 2) * scale), "V")}" : null,
            hasMinimum && draw.OneIn(3) ? $"start_up: {Text(draw.Next(3) * draw.Between(0, 90), "s")}" : null,
            draw.Sometimes(4, Keys, "duty", 5, 100),
            draw.OneIn(2) ? "essential: true" : null,
            draw.OneIn(5) ? "state: off" : null,
            .. Branch(hasInputs),
            draw.OneIn(6) ? $"inrush: {Mapping(draw.Pair(LoadKeys.Inrush, "current", 1, 40), draw.Pair(LoadKeys.Inrush, "lasts", 1, 120))}" : null,
            earlier.Length > 0 && draw.OneIn(6) ? $"needs: [{draw.Any(earlier)}]" : null,
            draw.Sometimes(8, Keys, "peak", 1, 30),
        ]);
    }

    private string Demand() => draw.Next(3) switch
    {
        0 => draw.Pair(Keys, "current", 0.1, 9),
        1 => draw.Pair(Keys, "power", 2 * scale, 110 * scale),
        _ => draw.Pair(Keys, "resistance", 1.2 * scale, 40 * scale),
    };

    private IEnumerable<string?> Branch(bool hasInputs) =>
    [
        draw.OneIn(4) ? $"wire: {feeds.Wire()}" : null,
        hasInputs || !draw.OneIn(8) ? null : $"switch: {draw.Any("closed", "closed", "open")}",
        draw.OneIn(6) ? $"breaker: {feeds.Protection(LoadKeys.Breaker)}" : null,
        draw.OneIn(8) ? $"fuse: {feeds.Protection(FeedKeys.Fuse)}" : null,
        draw.OneIn(6) ? $"return: {feeds.Return()}" : null,
    ];
}
