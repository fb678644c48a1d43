using System.Collections.Frozen;
using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>Resistance and current ratings of stranded, tin-plated copper aircraft wire by gauge.</summary>
/// <remarks>
/// The ratings hold for continuous current, 70 degC ambient, bundles of 33 or more wires (9 or more from No. 8 up) of which at most 20 % of the capacity
/// is used, at 60,000 ft: note 1 of the table. It lists circular mils of the strands too.
/// </remarks>
public static class WireTable
{
    /// <summary>Where every row comes from.</summary>
    public const string Source = "FAA AC 43.13-1B, table 11-9, page 11-23";

    /// <summary>The ambient temperature at which the ratings hold: note 1 of the table.</summary>
    public static readonly Temperature RatedAmbient = Temperature.FromCelsius(70);

    internal const double MetresPerThousandFeet = 304.8;

    /// <summary>From the thinnest to the thickest wire.</summary>
    public static ImmutableArray<WireRow> Rows { get; } =
    [
        new(new WireGauge(24), 28.40, 475, 2.5, 4, 5),
        new(new WireGauge(22), 16.20, 755, 3, 5, 6),
        new(new WireGauge(20), 9.88, 1_216, 4, 7, 9),
        new(new WireGauge(18), 6.23, 1_900, 6, 9, 12),
        new(new WireGauge(16), 4.81, 2_426, 7, 11, 14),
        new(new WireGauge(14), 3.06, 3_831, 10, 14, 18),
        new(new WireGauge(12), 2.02, 5_874, 13, 19, 25),
        new(new WireGauge(10), 1.26, 9_354, 17, 26, 32),
        new(new WireGauge(8), 0.70, 16_983, 38, 57, 71),
        new(new WireGauge(6), 0.44, 26_818, 50, 76, 97),
        new(new WireGauge(4), 0.28, 42_615, 68, 103, 133),
        new(new WireGauge(2), 0.18, 66_500, 95, 141, 179),
        new(new WireGauge(1), 0.15, 81_700, 113, 166, 210),
        new(new WireGauge(0), 0.12, 104_500, 128, 192, 243),
        new(new WireGauge(-1), 0.09, 133_000, 147, 222, 285),
        new(new WireGauge(-2), 0.07, 166_500, 172, 262, 335),
        new(new WireGauge(-3), 0.06, 210_900, 204, 310, 395),
    ];

    private static readonly FrozenDictionary<WireGauge, WireRow> ByGauge = Rows.ToFrozenDictionary(row => row.Gauge);

    /// <summary>Greatest resistance per metre at 20 degC, ohm; <see langword="null"/> for a gauge that the table does not list.</summary>
    public static double? OhmsPerMetreAt20(WireGauge gauge) =>
        Row(gauge)?.OhmsPerMetreAt20;

    /// <summary><see langword="null"/> for a gauge that the table does not list.</summary>
    public static WireRow? Row(WireGauge gauge) => ByGauge.GetValueOrDefault(gauge);
}
