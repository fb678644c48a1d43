using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryCurves;

/// <summary>Lifetime of one battery over its discharge current.</summary>
public sealed record BatteryCurve
{
    public required Battery Battery { get; init; }

    /// <summary><see langword="null"/>: to exhaustion.</summary>
    public required Voltage? EndVoltage { get; init; }

    /// <summary>By rising current.</summary>
    public required ImmutableArray<BatteryCurveRow> Rows { get; init; }

    /// <summary>Closely spaced currents over the range of <see cref="Rows"/> and of what was stated, for a plot.</summary>
    public required ImmutableArray<BatteryCurveRow> Fine { get; init; }

    /// <summary>One for each rating of a battery with an exponent; empty with a data sheet's points, which are met exactly.</summary>
    public required ImmutableArray<RatingCheck> RatingChecks { get; init; }
}
