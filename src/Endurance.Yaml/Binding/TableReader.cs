using System.Collections.Immutable;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Units;

namespace Endurance.Yaml.Binding;

/// <summary>One row of a table of pairs, in SI, and its place.</summary>
internal readonly record struct TableRow(double X, double Y, SourceSpan Place);

/// <summary>Reads lists of pairs such as <c>[[0 %, 11.0 V], [100 %, 12.85 V]]</c>.</summary>
internal static class TableReader
{
    /// <summary>The rows; <see langword="null"/> after a diagnostic.</summary>
    /// <param name="mapping">Owner of the key.</param>
    /// <param name="key">A key whose value is a list of pairs.</param>
    /// <param name="x">Takes the first of each pair.</param>
    /// <param name="y">Takes the second of each pair.</param>
    /// <param name="rising">What the first of each pair is, where it has to rise from row to row.</param>
    public static ImmutableArray<TableRow>? Rows(MappingReader mapping, string key, QuantityRange x, QuantityRange y, string? rising = null)
    {
        var form = mapping.Known(key).Form;
        if (mapping.Find(key) is not SequenceNode list)
        {
            if (mapping.Find(key) is ScalarNode { IsNull: true })
                mapping.Error("missing-value", key, $"`{key}` has no value", form);
            else if (mapping.Find(key) is { } other)
                mapping.Reading.WrongShape(other, mapping.PlaceOf(key), $"`{key}`", form);
            return null;
        }

        var rows = ImmutableArray.CreateBuilder<TableRow>(list.Items.Length);
        foreach (var item in list.Items)
        {
            if (Row(mapping.Reading, item, key, x, y) is { } row)
                rows.Add(row);
        }

        var areInOrder = rising is null
            || Rises(mapping, rows, row => row.X, (highest, value) => value > highest, $"the {rising} of this row is not above those of the rows before", $"rows in order of rising {rising}");
        return areInOrder && rows.Count == list.Items.Length ? rows.ToImmutable() : null;
    }

    /// <summary>Whether a column goes on from row to row, each against the highest before it; every fault is reported.</summary>
    /// <param name="mapping">Owner of the table.</param>
    /// <param name="rows">The table.</param>
    /// <param name="value">The column.</param>
    /// <param name="goesOn">Whether the highest so far may be followed by a value.</param>
    /// <param name="fault">What is wrong with a row that does not go on.</param>
    /// <param name="expected">What is right.</param>
    /// <param name="code">Of the diagnostic.</param>
    public static bool Rises(
        MappingReader mapping, IEnumerable<TableRow> rows, Func<TableRow, double> value, Func<double, double, bool> goesOn, string fault, string expected, string code = "table-not-rising")
    {
        var highest = double.NegativeInfinity;
        var rises = true;
        foreach (var row in rows)
        {
            if (!goesOn(highest, value(row)))
            {
                mapping.Reading.Diagnostics.Error(code, row.Place, fault, expected);
                rises = false;
            }

            highest = Math.Max(highest, value(row));
        }

        return rises;
    }

    /// <summary>Whether a table over charge, which rises, spans 0 % to 100 %; a fault is reported.</summary>
    public static bool SpansCharge(MappingReader mapping, string key, ImmutableArray<TableRow> rows)
    {
        if (!rows.IsEmpty && rows[0].X == 0 && rows[^1].X == 1)
            return true;
        mapping.Error("table-incomplete", key, $"`{key}` of {mapping.Owner} does not cover the whole charge", "a first row at 0 % and a last row at 100 %");
        return false;
    }

    private static TableRow? Row(Reading reading, DocumentNode item, string key, QuantityRange x, QuantityRange y)
    {
        if (item is not SequenceNode { Items: [var first, var second] })
        {
            if (item is not RefusedNode)
                reading.Diagnostics.Error("wrong-shape", item.Span, $"a row of `{key}` is not a pair", $"pairs such as [{x.Example}, {y.Example}]");
            return null;
        }

        var left = reading.Quantity(first, first.Span, key, x);
        var right = reading.Quantity(second, second.Span, key, y);
        return left is null || right is null ? null : new TableRow(left.Value, right.Value, item.Span);
    }
}
