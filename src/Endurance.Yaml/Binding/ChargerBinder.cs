using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>chargers</c> and <c>converters</c>, which are the same thing.</summary>
internal static class ChargerBinder
{
    /// <summary>Fall of the output from no load to the limit when no droop is given.</summary>
    private static readonly Voltage DefaultFall = Voltage.FromVolts(0.1);

    public static ImmutableArray<Charger> Bind(MappingReader top) =>
    [
        .. NamedParts.Of(top, "chargers", SupplyKeys.Charger).Select(part => Charger(part.Name, part.Reader)),
        .. NamedParts.Of(top, "converters", SupplyKeys.Converter).Select(part => Charger(part.Name, part.Reader)),
    ];

    private static Charger Charger(string name, MappingReader reader)
    {
        var limit = Current.FromAmperes(reader.RequiredQuantity("limit"));
        var droop = reader.Resistance("droop");
        if (droop is null)
        {
            droop = Resistance.FromOhms(DefaultFall.Volts / limit.Amperes);
            reader.Reading.Assume(name, FormattableString.Invariant($"droop {droop.Value.Milliohms:G4} mohm: its output falls by 0.1 V up to its limit"));
        }

        if (!reader.Has("cut_in") && !reader.Has("cut_out"))
            reader.Reading.Assume(name, "runs whenever its input has voltage: no cut_in and cut_out");
        RequireBoth(reader, "cut_in", "cut_out");
        RequireBoth(reader, "cut_out", "cut_in");
        if (!reader.Has("state"))
            reader.Reading.Assume(name, "on at time zero");
        return new Charger
        {
            Name = name,
            From = reader.RequiredText("from"),
            To = reader.RequiredText("to"),
            Output = Voltage.FromVolts(reader.RequiredQuantity("output")),
            Limit = limit,
            Efficiency = reader.RequiredQuantity("efficiency"),
            Droop = droop.Value,
            CutIn = reader.Voltage("cut_in"),
            CutOut = reader.Voltage("cut_out"),
            IsOn = reader.Either("state", "on", "off") ?? true,
        };
    }

    private static void RequireBoth(MappingReader reader, string given, string other)
    {
        if (reader.Has(given) && !reader.Has(other))
            reader.Reading.Diagnostics.Error("missing-key", reader.PlaceOf(given), $"{reader.Owner} has `{given}` but no `{other}`", $"{other}: {reader.Known(other).Form}");
    }
}
