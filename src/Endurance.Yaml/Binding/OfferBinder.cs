using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>batteries_on_offer</c>.</summary>
internal static class OfferBinder
{
    private const string Key = "batteries_on_offer";

    public static ImmutableArray<BatteryOnOffer> Bind(MappingReader top)
    {
        if (top.Find(Key) is SequenceNode { Items.IsEmpty: true })
            return [];
        var readers = MappingList.Of(top, Key, StudyKeys.Offer, "battery on offer");
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var reader in readers)
        {
            if (reader.Text("name") is { } name && !names.Add(name))
                reader.Error("duplicate-name", "name", $"a battery on offer named {Quoted.Of(name)} stands above", "a name for each");
        }

        return [.. readers.Select(Offer)];
    }

    private static BatteryOnOffer Offer(MappingReader reader) => new(
        reader.RequiredText("name"),
        Charge.FromCoulombs(reader.RequiredQuantity("capacity")),
        Duration.FromSeconds(reader.RequiredQuantity("rate")),
        reader.Quantity("mass"));
}
