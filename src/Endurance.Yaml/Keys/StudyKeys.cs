using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of what studies need beside the aircraft: tolerances and batteries on offer.</summary>
internal static class StudyKeys
{
    public static readonly Section Tolerance = new("a tolerance",
    [
        Of("uniform", "[low, high]", new Row([Shapes.Text, Shapes.Text])),
        Of("triangular", "[low, likeliest, high]", new Row([Shapes.Text, Shapes.Text, Shapes.Text])),
        Of("normal", "[mean, deviation]", new Row([Shapes.Text, Shapes.Text])),
    ]);

    public static readonly Section Offer = new("a battery on offer",
    [
        Required("name", "a line of text"),
        RequiredQuantity("capacity", BatteryKeys.Capacity),
        RequiredQuantity("rate", BatteryKeys.Rate),
        Quantity("mass", QuantityRange.Above(Dimension.Mass, "kg", 0, 1000, "6.4 kg")),
    ]);
}
