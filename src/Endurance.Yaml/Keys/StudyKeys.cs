using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of what studies need beside the aircraft: tolerances and batteries on offer.</summary>
internal static class StudyKeys
{
    public static readonly Section Tolerance = new("a tolerance",
    [
        Text("uniform", "[low, high]"),
        Text("triangular", "[low, likeliest, high]"),
        Text("normal", "[mean, deviation]"),
    ]);

    public static readonly Section Offer = new("a battery on offer",
    [
        Required("name", "a line of text"),
        RequiredQuantity("capacity", BatteryKeys.Capacity),
        RequiredQuantity("rate", BatteryKeys.Rate),
        Quantity("mass", QuantityRange.Above(Dimension.Mass, "kg", 0, 1000, "6.4 kg")),
    ]);
}
