using System.Collections.Immutable;
using Endurance.Components;

namespace Endurance.Studies.Wiring;

/// <summary>What the scenario does not say about its wires and loads.</summary>
public sealed record WiringOptions
{
    /// <summary>Of every wire.</summary>
    public Insulation Insulation { get; init; } = Insulation.Rated150;

    /// <summary>Of every wire.</summary>
    public Bundling Bundling { get; init; } = Bundling.InBundle;

    /// <summary>By name of load or feed; one that is missing is guessed, and said to be.</summary>
    public ImmutableDictionary<string, LoadType> LoadTypes { get; init; } = ImmutableDictionary<string, LoadType>.Empty;
}
