using System.Collections.Immutable;
using Endurance.Yaml.Units;
using static Endurance.Yaml.Keys.KnownKey;

namespace Endurance.Yaml.Keys;

/// <summary>The keys of what studies need beside the aircraft: tolerances and batteries on offer.</summary>
internal static class StudyKeys
{
    /// <summary>Keys that each say how a tolerance is spread.</summary>
    public static readonly ImmutableArray<string> Distributions = ["uniform", "triangular", "normal"];

    public static readonly Section Tolerance = new("a tolerance",
    [
        Of("uniform", "[low, high]", new Row([Shapes.Text, Shapes.Text])),
        Of("triangular", "[low, likeliest, high]", new Row([Shapes.Text, Shapes.Text, Shapes.Text])),
        Of("normal", "[mean, deviation]", new Row([Shapes.Text, Shapes.Text])),
        Text("group", "a name that another tolerance has too: they are low together and high together"),
    ]);

    public static readonly Section Offer = new("a battery on offer",
    [
        Required("name", "a line of text"),
        RequiredQuantity("capacity", BatteryKeys.Capacity),
        RequiredQuantity("rate", BatteryKeys.Rate),
        Quantity("mass", QuantityRange.Above(Dimension.Mass, "kg", 0, 1000, "6.4 kg")),
    ]);
}
