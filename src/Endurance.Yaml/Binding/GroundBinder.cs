using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>grounds</c> and the returns that lead to them.</summary>
internal static class GroundBinder
{
    public static ImmutableArray<GroundPoint> Bind(MappingReader top) =>
        [.. NamedParts.Of(top, "grounds", SupplyKeys.Ground).Select(part => new GroundPoint { Name = part.Name, Resistance = Resistance.FromOhms(part.Reader.RequiredQuantity("resistance")) })];

    /// <summary>The return of a feed or load; <see langword="null"/> when absent or faulty.</summary>
    public static ReturnPath? Return(string part, MappingReader owner, Temperature ambient) =>
        owner.Mapping("return", FeedKeys.Return) is { } reader && WireBinder.Bind(part, reader, ambient, "return") is { } wire
            ? new ReturnPath { Wire = wire, To = reader.Text("to") }
            : null;
}
