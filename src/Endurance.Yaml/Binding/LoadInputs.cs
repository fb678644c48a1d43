using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds what supplies a load: one bus, or several inputs.</summary>
internal static class LoadInputs
{
    private static readonly Diode Placeholder = new IdealDiodeController { OnResistance = Resistance.FromMilliohms(1), RegulatedDrop = default };

    /// <summary>One for each item of the list, so that an index means the same in the file; faults are reported.</summary>
    public static ImmutableArray<LoadInput> Bind(string load, MappingReader reader, NamedDiodes diodes)
    {
        if (reader.Find("inputs") is not { } node)
            return [];
        if (reader.Has("bus"))
            reader.Error("conflicting-keys", "bus", $"{reader.Owner} has both `inputs` and `bus`", "one of the two");
        var form = "a list of " + reader.Known("inputs").Form;
        if (node is not SequenceNode list)
        {
            if (node is ScalarNode { IsNull: true })
                reader.Error("missing-value", "inputs", "`inputs` has no value", form);
            else
                reader.Reading.WrongShape(node, reader.PlaceOf("inputs"), "`inputs`", form);
            return [];
        }

        if (list.Items.Length < 2)
            reader.Error("table-incomplete", "inputs", $"`inputs` of {reader.Owner} has fewer than two supplies", "two or more, or `bus` for a single one");
        return [.. list.Items.Select((item, index) => Input(load, reader, item, index, diodes))];
    }

    /// <summary>The bus of a load without inputs; a missing one is reported.</summary>
    public static string Bus(MappingReader reader)
    {
        if (!reader.Has("bus") && !reader.Has("inputs"))
            reader.ReportMissing("bus", "the name of a bus; or `inputs` with several");
        return reader.RequiredText("bus");
    }

    private static LoadInput Input(string load, MappingReader owner, DocumentNode item, int index, NamedDiodes diodes)
    {
        if (item is not MappingNode mapping)
        {
            owner.Reading.WrongShape(item, item.Span, Invariant($"input {index + 1} of {owner.Owner}"), "{bus: essential_bus, diode: steering_diode}");
            return new LoadInput(MappingReader.NoName, Placeholder);
        }

        var place = mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Key.Span;
        var reader = new MappingReader(owner.Reading, mapping, LoadKeys.Input, Invariant($"input {index + 1} of {owner.Owner}"), place);
        var bus = reader.RequiredText("bus");
        return new LoadInput(bus, diodes.Of(load, reader).Diode ?? Placeholder);
    }
}
