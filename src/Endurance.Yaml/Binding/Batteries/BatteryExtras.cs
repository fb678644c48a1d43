using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds the cells, the charge limit, the polarisation and the protection of a battery.</summary>
internal static class BatteryExtras
{
    private const int MostPairs = 2;

    public static double? ChargeAcceptance(BatteryPart part)
    {
        if (part.Reader.Has("charge_acceptance"))
            return part.Reader.Quantity("charge_acceptance");
        if (part.Values?.ChargeAcceptancePerHour is { } library)
        {
            part.Library(Invariant($"charge current at most {library.Value:0.##} /h times the charge missing"), library.Source);
            return library.Value;
        }

        part.Reader.Reading.Assume(part.Name, "charge current not limited by the battery: no charge_acceptance");
        return null;
    }

    public static ImmutableArray<PolarisationPair> Polarisation(MappingReader reader)
    {
        var pairs = MappingList.Of(reader, "polarisation", BatteryKeys.Polarisation, "pair")
            .Select(pair => new PolarisationPair(Resistance.FromOhms(pair.RequiredQuantity("resistance")), Duration.FromSeconds(pair.RequiredQuantity("time"))))
            .ToImmutableArray();
        if (pairs.Length > MostPairs)
            reader.Error("too-many", "polarisation", $"the polarisation of {reader.Owner} has {pairs.Length} pairs", "one or two pairs, the slowest that matter");
        return pairs;
    }

    public static BatteryProtection? Protection(MappingReader owner)
    {
        if (owner.Mapping("protection", BatteryKeys.Protection) is not { } reader)
            return null;
        if (!reader.Has("opens_below") && !reader.Has("opens_above") && !reader.Has("no_charge_below"))
        {
            reader.Reading.Diagnostics.Error("missing-key", reader.Place, $"{reader.Owner} protects from nothing", "opens_below: 10.0 V, opens_above: 60 A or no_charge_below: 0 degC");
            return null;
        }

        var protection = new BatteryProtection
        {
            OpensBelow = reader.Voltage("opens_below"),
            OpensAbove = reader.Quantity("opens_above") is { } amperes ? Current.FromAmperes(amperes) : null,
            NoChargeBelow = reader.Temperature("no_charge_below"),
            RecloseAbove = reader.Voltage("recloses_above"),
        };
        if (reader.Has("recloses_above") && !reader.Has("opens_below") && !reader.Has("opens_above"))
            reader.Error("never-open", "recloses_above", $"{reader.Owner} recloses but never opens", "opens_below: 10.0 V or opens_above: 60 A beside it");
        if (protection is { RecloseAbove: { } closes, OpensBelow: { } opens } && closes <= opens)
            reader.Error("recloses-below-opening", "recloses_above", Invariant($"{reader.Owner} would reclose at {closes.Volts:0.###} V and open again below {opens.Volts:0.###} V"), Invariant($"a voltage above {opens.Volts:0.###} V"));
        return protection;
    }
}
