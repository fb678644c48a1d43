using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryCurves;

/// <summary>What is asked of a battery's curve.</summary>
public sealed record BatteryCurveOptions
{
    /// <summary>Each above zero; empty: round currents around the rating, and those that lifetimes were stated for.</summary>
    public ImmutableArray<Current> Currents { get; init; } = [];

    /// <summary>Terminal voltage at which the minutes end, above zero; <see langword="null"/>: exhaustion.</summary>
    public Voltage? EndVoltage { get; init; }
}
