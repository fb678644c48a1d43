using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>capacity_model</c> and <c>kinetic</c>.</summary>
internal static class CapacityModelBinder
{
    private const double NoticeableDifference = 0.25;

    public static Battery Bind(BatteryPart part, Battery battery)
    {
        var reader = part.Reader;
        var isKinetic = reader.Either("capacity_model", "kinetic", "peukert") ?? false;
        battery = battery with { TypedWells = Typed(reader), CapacityModel = isKinetic ? CapacityModel.Kinetic : CapacityModel.Peukert };
        if (battery.TypedWells is { } typed && !part.HasErrors)
            Compare(typed, battery, part);
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

    /// <summary>Wells and rating describe one battery, so at the rated current they give about the same charge.</summary>
    private static void Compare(KineticWells typed, Battery battery, BatteryPart part)
    {
        var given = typed.CapacityIn(battery.Rate);
        if (Math.Abs((given / battery.RatedCapacity) - 1) <= NoticeableDifference)
            return;
        part.Warn(
            "kinetic-differs", "kinetic",
            Invariant($"the wells of {part.Reader.Owner} give {given.AmpereHours:0.##} Ah in {battery.Rate.Hours:0.##} h, where it is rated at {battery.RatedCapacity.AmpereHours:0.##} Ah"),
            "wells that were fitted to this battery, or a rating that agrees with them");
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
