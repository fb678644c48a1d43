using System.Collections.Immutable;
using Endurance.Library;
using Endurance.Numerics;
using Endurance.Scenarios;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>EMF and resistance over charge: as typed, else from the chemistry.</summary>
internal static class BatteryTables
{
    /// <summary>Stands in for ohms that could not be read; usual for <see cref="BatteryLife.Placeholder"/>.</summary>
    private static readonly PiecewiseLinear Placeholder = PiecewiseLinear.Constant(0.02);

    /// <summary>Volts over charge.</summary>
    /// <param name="part">The battery.</param>
    /// <param name="life">Its rated current sets the EMF when empty.</param>
    /// <param name="settled">Ohms over charge of a new battery, polarisation included.</param>
    public static PiecewiseLinear Emf(BatteryPart part, BatteryLife life, PiecewiseLinear settled)
    {
        var reader = part.Reader;
        if (reader.Has("emf"))
            return Emf(reader) ?? PiecewiseLinear.Constant(part.NominalVoltage.Volts);
        if (part.Values is not { } values)
        {
            reader.ReportMissing("emf", reader.Known("emf").Form);
            return PiecewiseLinear.Constant(part.NominalVoltage.Volts);
        }

        var table = ChemistryDefaults.Emf(values, part.Twelves, life.ReferenceCurrent, settled);
        part.Library($"EMF over charge {Words(table, volts => Invariant($"{volts:0.##} V"))}", values.Emf.Source);
        part.Library(Invariant($"EMF at 0 %: {values.EndVoltsPerCell.Value:0.##} V a cell plus the drop of the rated current"), values.EndVoltsPerCell.Source);
        return table;
    }

    /// <summary>Ohms over charge at 25 degC: as typed, or of a new battery of the chemistry.</summary>
    public static PiecewiseLinear Resistance(BatteryPart part, BatteryLife life)
    {
        var reader = part.Reader;
        if (reader.Has("resistance"))
            return Resistance(reader) ?? Placeholder;
        if (part.Values is not { } values)
        {
            reader.ReportMissing("resistance", reader.Known("resistance").Form);
            return Placeholder;
        }

        var table = ChemistryDefaults.Resistance(values, part.Twelves, life.Capacity);
        var aged = reader.Has("resistance_factor") || !reader.Has("health") ? "" : ", divided by its health";
        part.Library($"resistance when new, at 25 degC, over charge {Words(table, ohms => Invariant($"{ohms * 1000:0.##} mohm"))}{aged}", values.MilliohmAmpereHours.Source);
        return table;
    }

    private static string Words(PiecewiseLinear table, Func<double, string> value) =>
        string.Join(", ", table.X.Zip(table.Y, (x, y) => Invariant($"{x * 100:0.#} %: {value(y)}")));

    private static PiecewiseLinear? Emf(MappingReader reader)
    {
        if (TableReader.Rows(reader, "emf", BatteryKeys.Charge, BatteryKeys.Emf, "charge") is not { } rows || !TableReader.SpansCharge(reader, "emf", rows))
            return null;
        if (!TableReader.Rises(
            reader, rows, row => row.Y, (highest, volts) => volts >= highest, $"the EMF of {reader.Owner} falls while its charge rises", "volts that do not fall from one row to the next", "emf-falls"))
            return null;
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
                ? reader.Reading.Quantity(node, reader.PlaceOf("resistance"), "resistance", BatteryKeys.Resistance)
                : null;
            return ohms is { } value ? PiecewiseLinear.Constant(value) : null;
        }

        var rows = TableReader.Rows(reader, "resistance", BatteryKeys.Charge, BatteryKeys.Resistance, "charge");
        return rows is { } table && TableReader.SpansCharge(reader, "resistance", table) ? Table(table) : null;
    }

    private static PiecewiseLinear Table(ImmutableArray<TableRow> rows) => PiecewiseLinear.FromPoints([.. rows.Select(row => (row.X, row.Y))]);
}
