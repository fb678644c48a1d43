using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds the <c>landing</c> of the scenario or of a case.</summary>
internal static class LandingBinder
{
    /// <summary><see langword="null"/> when absent or faulty.</summary>
    public static Landing? Bind(MappingReader owner, LoadGroups groups) => owner.Mapping("landing", SupplyKeys.Landing) is { } reader
        ? new Landing(reader.Has("connect") ? groups.Spelt(NameList.Of(reader, "connect")) : [], Duration.FromSeconds(reader.RequiredQuantity("lasts")))
        : null;
}
