using System.Collections.Frozen;
using System.Collections.Immutable;
using Endurance.Components;

namespace Endurance.Library;

/// <summary>Resistance of stranded, tin-plated copper aircraft wire by gauge.</summary>
public static class WireTable
{
    /// <summary>Where every row comes from.</summary>
    public const string Source = "FAA AC 43.13-1B, table 11-9, page 11-23";

    private const double MetresPerThousandFeet = 304.8;

    /// <summary>From the thinnest to the thickest wire.</summary>
    public static ImmutableArray<WireRow> Rows { get; } =
    [
        new(new WireGauge(24), 28.40),
        new(new WireGauge(22), 16.20),
        new(new WireGauge(20), 9.88),
        new(new WireGauge(18), 6.23),
        new(new WireGauge(16), 4.81),
        new(new WireGauge(14), 3.06),
        new(new WireGauge(12), 2.02),
        new(new WireGauge(10), 1.26),
        new(new WireGauge(8), 0.70),
        new(new WireGauge(6), 0.44),
        new(new WireGauge(4), 0.28),
        new(new WireGauge(2), 0.18),
        new(new WireGauge(1), 0.15),
        new(new WireGauge(0), 0.12),
        new(new WireGauge(-1), 0.09),
        new(new WireGauge(-2), 0.07),
        new(new WireGauge(-3), 0.06),
    ];

    private static readonly FrozenDictionary<WireGauge, WireRow> ByGauge = Rows.ToFrozenDictionary(row => row.Gauge);

    /// <summary>Greatest resistance per metre at 20 degC, ohm; <see langword="null"/> for a gauge that the table does not list.</summary>
    public static double? OhmsPerMetreAt20(WireGauge gauge) =>
        ByGauge.TryGetValue(gauge, out var row) ? row.OhmsPerThousandFeet / MetresPerThousandFeet : null;
}
