using System.Collections.Immutable;
using Endurance.Components;

namespace Endurance.Yaml.Binding;

/// <summary>Spells the names of groups of loads out.</summary>
internal sealed class LoadGroups(ImmutableArray<Load> loads)
{
    /// <summary>Every load that a name means, in the order of the file; the name itself where it is no group.</summary>
    public IEnumerable<string> Spelt(string name) => name switch
    {
        "all" => loads.Select(load => load.Name),
        "essential" => loads.Where(load => load.IsEssential).Select(load => load.Name),
        "non_essential" => loads.Where(load => !load.IsEssential).Select(load => load.Name),
        _ => [name],
    };

    /// <summary>Every load that some names mean, each once.</summary>
    public ImmutableArray<string> Spelt(ImmutableArray<string> names) => [.. names.SelectMany(Spelt).Distinct(StringComparer.Ordinal)];
}
