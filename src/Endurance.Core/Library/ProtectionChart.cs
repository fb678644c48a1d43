using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>The largest breaker or fuse that protects a copper wire, by gauge.</summary>
/// <remarks>Its assumptions are not those of <see cref="WireTable"/>: it gives No. 22 5 A and No. 20 7.5 A, above that table's bundle ratings.</remarks>
public static class ProtectionChart
{
    /// <summary>Where every row comes from.</summary>
    public const string Source = "FAA AC 43.13-1B, table 11-3, page 11-15";

    /// <summary>What the chart rests on.</summary>
    public const string Basis = "135 degF, 30,000 ft, bundles of 15 or more wires at 20 % of their capacity (" + Sourced<double>.FromMemory + ")";

    /// <summary>From the thinnest to the thickest wire; no breaker stands at 1 and 1/0.</summary>
    public static ImmutableArray<ProtectionChartRow> Rows { get; } =
    [
        Row(22, 5, 5),
        Row(20, 7.5, 5),
        Row(18, 10, 10),
        Row(16, 15, 10),
        Row(14, 20, 15),
        Row(12, 30, 20),
        Row(10, 40, 30),
        Row(8, 50, 50),
        Row(6, 80, 70),
        Row(4, 100, 70),
        Row(2, 125, 100),
        Row(1, null, 150),
        Row(0, null, 150),
    ];

    /// <summary>The largest rating for a gauge; a fusible link counts as a fuse. <see langword="null"/>: the chart is silent.</summary>
    public static Current? Largest(WireGauge gauge, ProtectionKind kind)
    {
        var row = Rows.FirstOrDefault(row => row.Gauge == gauge);
        return kind == ProtectionKind.Breaker ? row?.Breaker : row?.Fuse;
    }

    private static ProtectionChartRow Row(int gauge, double? breaker, double fuse) =>
        new(new WireGauge(gauge), breaker is { } amperes ? Current.FromAmperes(amperes) : null, Current.FromAmperes(fuse));
}
