using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Yaml.Binding;

/// <summary>What the ratings of a battery come to.</summary>
internal sealed record BatteryLife(Charge Capacity, Duration Rate, double Exponent)
{
    /// <summary>Stands in for ratings that could not be read.</summary>
    public static BatteryLife Placeholder { get; } = new(Charge.FromAmpereHours(10), Duration.FromHours(20), 1.2);

    /// <summary>Currents the exponent was derived from; <see langword="null"/>: typed or from the library.</summary>
    public (Current Lowest, Current Highest)? ExponentRange { get; init; }

    /// <summary><see langword="null"/>: Peukert's law.</summary>
    public LifetimeCurve? Lifetimes { get; init; }

    public ImmutableArray<Rating> Ratings { get; init; } = [];

    public Current ReferenceCurrent => Current.FromAmperes(Capacity.AmpereHours / Rate.Hours);
}
