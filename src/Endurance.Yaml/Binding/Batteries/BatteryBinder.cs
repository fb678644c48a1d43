using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>batteries</c>: what was typed, then what the chemistry supplies, then stated defaults.</summary>
internal sealed class BatteryBinder(SystemVoltage system, Temperature ambient, ImmutableArray<Load> loads)
{
    public ImmutableArray<Battery> Bind(MappingReader top) =>
        [.. NamedParts.Of(top, "batteries", BatteryKeys.Battery).Select(part => Battery(part.Name, part.Reader))];

    private Battery Battery(string name, MappingReader reader)
    {
        var part = new BatteryPart(name, reader, system, ambient);
        var health = part.Fraction("health", "health", null);
        var polarisation = BatteryExtras.Polarisation(reader);
        var points = DischargePointBinder.Points(reader);
        var life = reader.Has("discharge_points") ? DischargePointBinder.Lowest(points, part) : new RatingBinder(part, loads).Bind();
        var fresh = BatteryTables.Resistance(part, life);
        var settled = fresh.Raised(polarisation.Sum(pair => pair.Resistance.Ohms));
        var emf = BatteryTables.Emf(part, life, settled);
        life = points.IsEmpty ? life : DischargePointBinder.Through(points, part, emf, settled);
        var isAged = part.Values is not null && !reader.Has("resistance") && !reader.Has("resistance_factor");
        var battery = new Battery
        {
            Name = name,
            Bus = reader.RequiredText("bus"),
            Chemistry = part.Values?.Chemistry,
            RatedCapacity = life.Capacity,
            Rate = life.Rate,
            PeukertExponent = life.Exponent,
            ExponentRange = life.ExponentRange,
            Lifetimes = life.Lifetimes,
            Ratings = life.Ratings,
            Emf = emf,
            Resistance = isAged ? fresh.Scaled(1 / health) : fresh,
            ResistanceWhenNew = isAged ? fresh : null,
            ChargeEfficiency = part.Fraction("charge_efficiency", "charge efficiency", part.Values?.ChargeEfficiency),
            ChargeAcceptancePerHour = BatteryExtras.ChargeAcceptance(part),
            InitialCharge = part.Fraction("charge", "charge at time zero", null),
            Health = health,
            Temperature = part.Temperature,
            CapacityFactor = TemperatureFactors.Capacity(part),
            CapacityOverTemperature = reader.Has("capacity_factor") ? null : part.Values?.CapacityOverTemperature.Value,
            ResistanceFactor = TemperatureFactors.Resistance(part),
            ResistanceOverTemperature = reader.Has("resistance_factor") ? null : part.Values?.ResistanceOverTemperature.Value,
            Cells = part.Cells,
            Polarisation = polarisation,
            Protection = BatteryExtras.Protection(reader),
        };
        return CapacityModelBinder.Bind(part, battery);
    }
}
