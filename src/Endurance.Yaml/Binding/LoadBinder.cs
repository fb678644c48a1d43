using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>loads</c>.</summary>
internal static class LoadBinder
{
    private static readonly ImmutableArray<string> Demands = ["power", "current", "resistance"];

    public static ImmutableArray<Load> Bind(MappingReader top)
    {
        var parts = NamedParts.Of(top, "loads", PartKeys.Load).ToImmutableArray();
        AssumeFor(parts, "duty 100 %", reader => !reader.Has("duty"));
        AssumeFor(parts, "on at time zero", reader => !reader.Has("state"));
        AssumeFor(parts, "no start-up time", reader => reader.Has("restart") && !reader.Has("start_up"));
        AssumeFor(parts, "never comes back after a stop: no restart voltage", reader => reader.Has("minimum") && !reader.Has("restart"));
        return [.. parts.Select(part => Load(part.Name, part.Reader))];
    }

    private static Load Load(string name, MappingReader reader) => new()
    {
        Name = name,
        Bus = reader.RequiredText("bus"),
        Demand = Demand(reader),
        Duty = reader.Quantity("duty") ?? 1,
        Minimum = reader.Voltage("minimum"),
        Restart = reader.Voltage("restart"),
        StartUp = Duration.FromSeconds(reader.Quantity("start_up") ?? 0),
        IsEssential = reader.Either("essential", "true", "false") ?? reader.Has("essential"),
        IsOn = reader.Either("state", "on", "off") ?? true,
    };

    private static Demand Demand(MappingReader reader)
    {
        const string form = "one of power: 28 W, current: 0.6 A or resistance: 1.3 ohm";
        var given = Demands.Where(reader.Has).ToImmutableArray();
        if (given.IsEmpty && !reader.Has("peak") && !reader.Has("inputs"))
            reader.Reading.Diagnostics.Error("missing-key", reader.Place, $"{reader.Owner} has no power, current or resistance", form);
        if (given.Length > 1)
            reader.Error("conflicting-keys", given[1], $"{reader.Owner} has both `{given[0]}` and `{given[1]}`", form);
        if (reader.Quantity("power") is { } watts)
            return new ConstantPower(Power.FromWatts(watts));
        if (reader.Quantity("current") is { } amperes)
            return new ConstantCurrent(Current.FromAmperes(amperes));
        return new ConstantResistance(reader.Resistance("resistance") ?? Resistance.FromOhms(1));
    }

    private static void AssumeFor(ImmutableArray<(string Name, MappingReader Reader)> parts, string text, Func<MappingReader, bool> isAssumed)
    {
        ImmutableArray<string> names = [.. parts.Where(part => isAssumed(part.Reader)).Select(part => part.Name)];
        if (!names.IsEmpty)
            parts[0].Reader.Reading.Assume("loads", $"{text}: {string.Join(", ", names)}");
    }
}
