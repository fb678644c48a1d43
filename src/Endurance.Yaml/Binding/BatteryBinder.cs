using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>batteries</c>.</summary>
internal static class BatteryBinder
{
    public static ImmutableArray<Battery> Bind(MappingReader top, Temperature ambient, double nominalVolts) =>
        [.. NamedParts.Of(top, "batteries", PartKeys.Battery).Select(part => Battery(part.Name, part.Reader, ambient, nominalVolts))];

    private static Battery Battery(string name, MappingReader reader, Temperature ambient, double nominalVolts) => new()
    {
        Name = name,
        Bus = reader.RequiredText("bus"),
        RatedCapacity = Charge.FromCoulombs(reader.RequiredQuantity("capacity")),
        Rate = Duration.FromSeconds(reader.RequiredQuantity("rate")),
        PeukertExponent = reader.RequiredQuantity("peukert"),
        Emf = Emf(reader) ?? PiecewiseLinear.Constant(nominalVolts * 12 / 14),
        Resistance = Resistance(reader) ?? PiecewiseLinear.Constant(1),
        ChargeEfficiency = Fraction(reader, name, "charge_efficiency", "charge efficiency"),
        InitialCharge = Fraction(reader, name, "charge", "charge at time zero"),
        Health = Fraction(reader, name, "health", "health"),
        Temperature = BatteryTemperature(reader, name, ambient),
        CapacityFactor = Factor(reader, name, "capacity_factor", "capacity not changed by temperature: capacity factor 100 %"),
        ResistanceFactor = Factor(reader, name, "resistance_factor", "resistance not changed by temperature or age: resistance factor 1"),
    };

    private static PiecewiseLinear? Emf(MappingReader reader)
    {
        if (TableReader.Rows(reader, "emf", PartKeys.Charge, PartKeys.Emf) is not { } rows || !TableReader.SpansCharge(reader, "emf", rows))
            return null;
        for (var i = 1; i < rows.Length; i++)
        {
            if (rows[i].Y >= rows[i - 1].Y)
                continue;
            reader.Reading.Diagnostics.Error("emf-falls", rows[i].Place, $"the EMF of {reader.Owner} falls while its charge rises", "volts that do not fall from one row to the next");
            return null;
        }

        if (rows[^1].Y <= 0)
        {
            reader.Error("emf-zero", "emf", $"the EMF of {reader.Owner} is 0 V at every charge", "volts above 0 at 100 %");
            return null;
        }

        return Table(rows);
    }

    private static PiecewiseLinear? Resistance(MappingReader reader)
    {
        if (reader.Find("resistance") is not SequenceNode)
        {
            var ohms = reader.Find("resistance") is { } node
                ? reader.Reading.Quantity(node, reader.PlaceOf("resistance"), "resistance", PartKeys.BatteryResistance)
                : null;
            return ohms is { } value ? PiecewiseLinear.Constant(value) : null;
        }

        var rows = TableReader.Rows(reader, "resistance", PartKeys.Charge, PartKeys.BatteryResistance);
        return rows is { } table && TableReader.SpansCharge(reader, "resistance", table) ? Table(table) : null;
    }

    private static PiecewiseLinear Table(ImmutableArray<TableRow> rows) => PiecewiseLinear.FromPoints([.. rows.Select(row => (row.X, row.Y))]);

    private static double Fraction(MappingReader reader, string name, string key, string what)
    {
        if (!reader.Has(key))
            reader.Reading.Assume(name, $"{what} 100 %");
        return reader.Quantity(key) ?? 1;
    }

    private static double Factor(MappingReader reader, string name, string key, string text)
    {
        if (!reader.Has(key))
            reader.Reading.Assume(name, text);
        return reader.Quantity(key) ?? 1;
    }

    private static Temperature BatteryTemperature(MappingReader reader, string name, Temperature ambient)
    {
        if (!reader.Has("temperature"))
            reader.Reading.Assume(name, $"battery temperature as ambient, {ambient.Celsius:0.##} degC");
        return reader.Temperature("temperature") ?? ambient;
    }
}
