using System.Collections.Immutable;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of one kind of mapping.</summary>
/// <param name="Kind">What a message calls the owner, with its article.</param>
/// <param name="Keys">In the order a message lists them.</param>
internal sealed record Section(string Kind, ImmutableArray<KnownKey> Keys)
{
    public KnownKey? Find(string name) => Keys.FirstOrDefault(key => string.Equals(key.Name, name, StringComparison.Ordinal));

    /// <summary>The keys as a message lists them.</summary>
    public string Listed => string.Join(", ", Keys.Select(key => key.Name));
}
