using System.Collections.Immutable;
using System.Globalization;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>loads</c>.</summary>
internal sealed class LoadBinder(NamedDiodes diodes, Temperature ambient)
{
    private static readonly ImmutableArray<string> Demands = ["power", "current", "resistance"];
    private static readonly ImmutableArray<string> Bases = ["manual", "plate", "measured"];

    public ImmutableArray<Load> Bind(MappingReader top)
    {
        var parts = NamedParts.Of(top, "loads", LoadKeys.Load).ToImmutableArray();
        AssumeFor(parts, "duty 100 %", reader => !reader.Has("duty"));
        AssumeFor(parts, "on at time zero", reader => !reader.Has("state") && !reader.Has("switch"));
        AssumeFor(parts, "no start-up time", reader => reader.Has("restart") && !reader.Has("start_up"));
        AssumeFor(parts, "never comes back after a stop: no restart voltage", reader => reader.Has("minimum") && !reader.Has("restart"));
        return [.. parts.Select(part => Load(part.Name, part.Reader))];
    }

    private Load Load(string name, MappingReader reader)
    {
        var inputs = LoadInputs.Bind(name, reader, diodes);
        var handSwitch = ContactBinder.Switch(name, reader);
        var isOn = reader.Either("state", "on", "off");
        if (isOn is true && handSwitch is { IsClosed: false })
            reader.Error("conflicting-keys", "state", $"{reader.Owner} is on while its switch is open", "one of the two");
        return new Load
        {
            Name = name,
            Bus = inputs.IsEmpty ? LoadInputs.Bus(reader) : inputs[0].Bus,
            Inputs = inputs,
            Demand = Demand(reader),
            Duty = reader.Quantity("duty") ?? 1,
            Minimum = reader.Voltage("minimum"),
            Restart = reader.Voltage("restart"),
            StartUp = Duration.FromSeconds(reader.Quantity("start_up") ?? 0),
            IsEssential = reader.Either("essential", "true", "false") ?? reader.Has("essential"),
            IsOn = (isOn ?? true) && handSwitch is not { IsClosed: false },
            Wire = WireBinder.Bind(name, reader, ambient),
            Switch = handSwitch,
            Breaker = ProtectionBinder.Bind(name, reader, "breaker", ProtectionKind.Breaker, LoadKeys.Breaker),
            Fuse = ProtectionBinder.Bind(name, reader, "fuse", ProtectionKind.Fuse, FeedKeys.Fuse),
            Return = GroundBinder.Return(name, reader, ambient),
            Peak = reader.Quantity("peak") is { } peak ? Current.FromAmperes(peak) : null,
            Inrush = reader.Mapping("inrush", LoadKeys.Inrush) is { } inrush
                ? new Inrush(Current.FromAmperes(inrush.RequiredQuantity("current")), Duration.FromSeconds(inrush.RequiredQuantity("lasts")))
                : null,
            Needs = reader.Has("needs") ? NameList.Of(reader, "needs") : [],
            Phase = reader.Text("phase"),
            Basis = Basis(reader),
            MeasuredOn = MeasuredOn(reader),
        };
    }

    private static Demand Demand(MappingReader reader)
    {
        const string form = "one of power: 28 W, current: 0.6 A or resistance: 1.3 ohm";
        var given = Demands.Where(reader.Has).ToImmutableArray();
        if (given.IsEmpty)
            reader.Reading.Diagnostics.Error("missing-key", reader.Place, $"{reader.Owner} has no power, current or resistance", form);
        if (given.Length > 1)
            reader.Error("conflicting-keys", given[1], $"{reader.Owner} has both `{given[0]}` and `{given[1]}`", form);
        if (reader.Quantity("power") is { } watts)
            return new ConstantPower(Power.FromWatts(watts));
        if (reader.Quantity("current") is { } amperes)
            return new ConstantCurrent(Current.FromAmperes(amperes));
        return new ConstantResistance(reader.Resistance("resistance") ?? Resistance.FromOhms(1));
    }

    private static LoadBasis? Basis(MappingReader reader)
    {
        switch (reader.Text("basis"))
        {
            case null:
                return null;
            case "manual":
                return LoadBasis.Manual;
            case "plate":
                return LoadBasis.Plate;
            case "measured":
                return LoadBasis.Measured;
            case var word:
                reader.Error("unknown-word", "basis", $"`basis` is {Quoted.Of(word)}", reader.Known("basis").Form, NearestName.Find(word, Bases));
                return null;
        }
    }

    private static DateOnly? MeasuredOn(MappingReader reader)
    {
        if (reader.Text("measured_on") is not { } text)
            return null;
        if (reader.Find("basis") is not ScalarNode { Value: "measured" })
            reader.Error("conflicting-keys", "measured_on", $"{reader.Owner} has a `measured_on` but its figure is not said to be measured", "basis: measured");
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        reader.Error("not-a-date", "measured_on", $"{Quoted.Of(text)} is not a date", "year, month and day, such as 2026-05-02");
        return null;
    }

    private static void AssumeFor(ImmutableArray<(string Name, MappingReader Reader)> parts, string text, Func<MappingReader, bool> isAssumed)
    {
        ImmutableArray<string> names = [.. parts.Where(part => isAssumed(part.Reader)).Select(part => part.Name)];
        if (!names.IsEmpty)
            parts[0].Reader.Reading.Assume("loads", $"{text}: {string.Join(", ", names)}");
    }
}
