using System.Collections.Frozen;
using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>Current of a single copper wire in free air, whatever its insulation.</summary>
public static class FreeAirRatings
{
    /// <summary>Where every row comes from; the source names neither insulation nor ambient temperature.</summary>
    public const string Source = "HyperPhysics (Georgia State University), wire gauge table, column chassis wiring";

    private static readonly FrozenDictionary<int, double> Amperes = new Dictionary<int, double>
    {
        [22] = 7, [20] = 11, [18] = 16, [16] = 22, [14] = 32, [12] = 41, [10] = 55, [8] = 73, [6] = 101, [4] = 135, [2] = 181,
    }.ToFrozenDictionary();

    /// <summary><see langword="null"/> for a gauge that is not listed.</summary>
    public static Current? Of(WireGauge gauge) => Amperes.TryGetValue(gauge.Number, out var amperes) ? Current.FromAmperes(amperes) : null;
}
