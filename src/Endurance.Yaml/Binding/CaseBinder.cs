using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>failure_cases</c>; spells groups of loads out.</summary>
internal sealed class CaseBinder(LoadGroups groups)
{
    private const string StepForm = "steps such as - {at: 0 min, fail: [engine_alternator]}";

    public ImmutableArray<FailureCase> Bind(MappingReader top) =>
        [.. NamedParts.Of(top, "failure_cases", ScenarioKeys.FailureCase).Select(part => new FailureCase { Name = part.Name, Timeline = Timeline(part.Reader), Landing = LandingBinder.Bind(part.Reader, groups) })];

    private ImmutableArray<TimelineStep> Timeline(MappingReader reader)
    {
        switch (reader.Find("timeline"))
        {
            case null or ScalarNode { IsNull: true }:
                return [];
            case SequenceNode steps:
                return [.. steps.Items.Select((step, index) => Step(reader, step, index)).OfType<TimelineStep>()];
            case var other:
                reader.Reading.WrongShape(other, reader.PlaceOf("timeline"), "`timeline`", "a list of " + StepForm);
                return [];
        }
    }

    private TimelineStep? Step(MappingReader failureCase, DocumentNode node, int index)
    {
        if (node is not MappingNode mapping)
        {
            failureCase.Reading.WrongShape(node, node.Span, Invariant($"step {index + 1}"), StepForm);
            return null;
        }

        var place = mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Key.Span;
        var reader = new MappingReader(failureCase.Reading, mapping, ScenarioKeys.Step, Invariant($"step {index + 1} of {failureCase.Owner}"), place);
        return new TimelineStep
        {
            Trigger = TriggerBinder.Bind(reader),
            Actions = [.. mapping.Entries.SelectMany(entry => Actions(reader, entry))],
            Lasts = reader.Quantity("lasts") is { } seconds ? Duration.FromSeconds(seconds) : null,
        };
    }

    private IEnumerable<TimelineAction> Actions(MappingReader step, MappingEntry entry)
    {
        if (entry.Key.Value is "select")
            return Selections(step, entry.Value);
        if (VerbOf(entry.Key.Value) is not { } verb)
            return [];
        return NameList.Of(step, entry.Key.Value)
            .SelectMany(target => verb is ActionVerb.Shed or ActionVerb.Connect ? groups.Spelt(target) : [target])
            .Select(target => new TimelineAction(verb, target));
    }

    private static IEnumerable<TimelineAction> Selections(MappingReader step, DocumentNode node)
    {
        var form = step.Known("select").Form;
        if (node is not MappingNode mapping)
        {
            if (node is ScalarNode { IsNull: true })
                step.Error("missing-value", "select", "`select` has no value", form);
            else
                step.Reading.WrongShape(node, step.PlaceOf("select"), "`select`", form);
            return [];
        }

        return mapping.Entries
            .Select(entry => (Selector: entry.Key.Value, Position: step.Reading.ScalarAt(entry.Value, entry.Key.Span, "select", form)?.Value))
            .Where(selection => selection.Position is not null)
            .Select(selection => new TimelineAction(ActionVerb.Select, selection.Selector, selection.Position));
    }

    private static ActionVerb? VerbOf(string key) => key switch
    {
        "fail" => ActionVerb.Fail,
        "restore" => ActionVerb.Restore,
        "stop" => ActionVerb.Stop,
        "start" => ActionVerb.Start,
        "open" => ActionVerb.Open,
        "close" => ActionVerb.Close,
        "shed" => ActionVerb.Shed,
        "connect" => ActionVerb.Connect,
        "short" => ActionVerb.Short,
        "break" => ActionVerb.Break,
        "short_cell" => ActionVerb.ShortCell,
        "idle" => ActionVerb.Idle,
        "cruise" => ActionVerb.Cruise,
        _ => null,
    };
}
