using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>requirements</c>.</summary>
internal sealed class RequirementBinder(LoadGroups groups)
{
    private const string Form = "a list of requirements such as - {loads: essential, endure: 30 min}";

    /// <summary>One for each item of the list, so that an index means the same in the file; faults are reported.</summary>
    public ImmutableArray<Requirement> Bind(MappingReader top)
    {
        switch (top.Find("requirements"))
        {
            case null or ScalarNode { IsNull: true }:
                return [];
            case SequenceNode list:
                return [.. list.Items.Select((item, index) => Requirement(top, item, index))];
            case var other:
                top.Reading.WrongShape(other, top.PlaceOf("requirements"), "`requirements`", Form);
                return [];
        }
    }

    private Requirement Requirement(MappingReader top, DocumentNode item, int index)
    {
        if (item is not MappingNode mapping)
        {
            top.Reading.WrongShape(item, item.Span, Invariant($"requirement {index + 1}"), Form);
            return new Requirement { Loads = [MappingReader.NoName], Endure = Duration.Zero };
        }

        var place = mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Key.Span;
        var reader = new MappingReader(top.Reading, mapping, ScenarioKeys.Requirement, Invariant($"requirement {index + 1}"), place);
        if (reader.Has("loads") && reader.Has("bus"))
            reader.Error("conflicting-keys", "bus", $"{reader.Owner} has both `loads` and `bus`", "one of the two; write a second requirement for the other");
        if (!reader.Has("loads") && !reader.Has("bus"))
            reader.Reading.Diagnostics.Error("missing-key", reader.Place, $"{reader.Owner} has neither `loads` nor `bus`", "loads: essential, loads: [a, b], or bus: essential_bus");
        if (reader.Text("dips") is { } dips && !string.Equals(dips, "allowed", StringComparison.Ordinal))
            reader.Error("unknown-word", "dips", $"`dips` is {Quoted.Of(dips)}", "allowed; leave it out and a dip counts as a loss", NearestName.Find(dips, ["allowed"]));
        var names = reader.Has("loads") ? NameList.Of(reader, "loads") : [];
        ImmutableArray<string> none = reader.Has("bus") ? [] : [MappingReader.NoName];
        return new Requirement
        {
            Case = reader.Text("case"),
            Loads = reader.Has("loads") ? groups.Spelt(names) : none,
            LoadsLabel = names.IsEmpty ? null : string.Join(", ", names),
            Bus = reader.Has("bus") ? reader.RequiredText("bus") : null,
            Endure = Duration.FromSeconds(reader.Quantity("endure") ?? 0),
            DipsAllowed = reader.Has("dips"),
        };
    }
}
