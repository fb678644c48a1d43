using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>The diodes that a key <c>diode</c> can name: the scenario's own, then the classes of the library.</summary>
internal sealed class NamedDiodes
{
    // null for a diode that could not be read, which has been reported
    private readonly ImmutableSortedDictionary<string, Diode?> _own;

    public NamedDiodes(MappingReader top) => _own = NamedParts.Of(top, "diodes", FeedKeys.Diode)
        .ToImmutableSortedDictionary(part => part.Name, part => DiodeBinder.Bind(part.Name, part.Reader), StringComparer.Ordinal);

    /// <summary>Of the scenario's own.</summary>
    public ImmutableArray<string> Names => [.. _own.Keys];

    /// <summary>The diode of a part and its name, if it has one; faults are reported.</summary>
    public (Diode? Diode, string? Name) Of(string part, MappingReader reader)
    {
        if (reader.Find("diode") is not ScalarNode { IsNull: false } named)
            return (reader.Mapping("diode", FeedKeys.Diode) is { } own ? DiodeBinder.Bind(part, own) : null, null);
        if (_own.TryGetValue(named.Value, out var diode))
            return (diode, named.Value);
        if (DiodeTable.Find(named.Value) is { } known)
        {
            return (DiodeBinder.Listed(part, reader, known), known.Name);
        }

        ImmutableArray<string> all = [.. _own.Keys, .. DiodeTable.Rows.Select(row => row.Name)];
        reader.Error("unknown-name", "diode", $"there is no diode {Quoted.Of(named.Value)}", $"the name of a diode: {string.Join(", ", all)}; or {{kind: ...}} here", NearestName.Find(named.Value, all));
        return (null, null);
    }
}
