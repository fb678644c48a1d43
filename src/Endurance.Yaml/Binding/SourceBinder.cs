using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>alternators</c> and <c>buses</c>.</summary>
internal static class SourceBinder
{
    private static readonly Resistance DefaultDroop = Resistance.FromMilliohms(10);

    public static ImmutableArray<Alternator> Alternators(MappingReader top) =>
        [.. NamedParts.Of(top, "alternators", PartKeys.Alternator).Select(part => Alternator(part.Name, part.Reader))];

    public static ImmutableArray<Bus> Buses(MappingReader top) =>
        [.. NamedParts.Of(top, "buses", PartKeys.Bus).Select(part => new Bus { Name = part.Name, Cutoff = part.Reader.Voltage("cutoff") })];

    private static Alternator Alternator(string name, MappingReader reader)
    {
        var reading = reader.Reading;
        if (!reader.Has("droop"))
            reading.Assume(name, "droop 10 mohm");
        if (!reader.Has("driven_by"))
            reading.Assume(name, "turned whatever the engines do: no engine drives it");
        if (!reader.Has("state"))
            reading.Assume(name, "on at time zero");
        return new Alternator
        {
            Name = name,
            Bus = reader.RequiredText("bus"),
            Setpoint = Voltage.FromVolts(reader.RequiredQuantity("setpoint")),
            Rated = Current.FromAmperes(reader.RequiredQuantity("rated")),
            Droop = reader.Resistance("droop") ?? DefaultDroop,
            DrivenBy = reader.Text("driven_by"),
            IsOn = reader.Either("state", "on", "off") ?? true,
            LimitIdle = reader.Quantity("limit_idle") is { } amperes ? Current.FromAmperes(amperes) : null,
            TripsAbove = reader.Voltage("trips_above"),
            Field = reader.Mapping("field", PartKeys.Field) is { } field ? Field(name, field) : null,
        };
    }

    private static AlternatorField Field(string alternator, MappingReader reader)
    {
        if (!reader.Has("switch"))
            reader.Reading.Assume(alternator, "field switched on");
        return new AlternatorField
        {
            Bus = reader.RequiredText("bus"),
            Current = Current.FromAmperes(reader.RequiredQuantity("current")),
            IsOn = reader.Either("switch", "on", "off") ?? true,
        };
    }
}
