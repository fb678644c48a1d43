using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>capacity_model</c> and <c>kinetic</c>.</summary>
internal static class CapacityModelBinder
{
    public static Battery Bind(BatteryPart part, Battery battery)
    {
        var reader = part.Reader;
        var isKinetic = reader.Either("capacity_model", "kinetic", "peukert") ?? false;
        battery = battery with { TypedWells = Typed(reader), CapacityModel = isKinetic ? CapacityModel.Kinetic : CapacityModel.Peukert };
        if (!isKinetic || reader.Has("kinetic") || part.HasErrors)
            return battery;
        if (battery.KineticWells is not { } wells)
        {
            part.Warn("no-kinetic-wells", "capacity_model", $"the kinetic model cannot be fitted to {reader.Owner}: it loses too little, or too much, at high current; the lifetimes of its ratings are used as they are", "`kinetic` with three values of your own, or capacity_model: peukert");
            return battery with { CapacityModel = CapacityModel.Peukert };
        }

        part.Derived(
            Invariant($"two wells fitted to the lifetimes at the 20-, 5- and 1-hour currents: {wells.Available * 100:0.#} % available, {wells.RatePerHour:0.###} /h, ")
            + Invariant($"{wells.Capacity.AmpereHours:0.##} Ah in all, {wells.Capacity / battery.RatedCapacity * 100:0.#} % of the rating"));
        return battery;
    }

    private static KineticWells? Typed(MappingReader owner) => owner.Mapping("kinetic", BatteryKeys.Kinetic) is { } reader
        ? new KineticWells
        {
            Available = reader.RequiredQuantity("available"),
            RatePerHour = reader.RequiredQuantity("rate"),
            Capacity = Charge.FromCoulombs(reader.RequiredQuantity("capacity")),
        }
        : null;
}
