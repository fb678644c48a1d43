using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>failure_cases</c>; spells groups of loads out.</summary>
internal sealed class CaseBinder(ImmutableArray<Load> loads)
{
    private const string StepForm = "steps such as - {at: 0 min, fail: [engine_alternator]}";

    public ImmutableArray<FailureCase> Bind(MappingReader top) =>
        [.. NamedParts.Of(top, "failure_cases", ScenarioKeys.FailureCase).Select(part => new FailureCase { Name = part.Name, Timeline = Timeline(part.Reader) })];

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
            failureCase.Reading.WrongShape(node, node.Span, $"step {index + 1}", StepForm);
            return null;
        }

        var place = mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Key.Span;
        var reader = new MappingReader(failureCase.Reading, mapping, ScenarioKeys.Step, $"step {index + 1} of {failureCase.Owner}", place);
        var trigger = Trigger(reader);
        return new TimelineStep { Trigger = trigger, Actions = [.. mapping.Entries.SelectMany(entry => Actions(reader, entry))] };
    }

    private static Trigger Trigger(MappingReader reader)
    {
        if (reader.Has("at") && reader.Has("when"))
            reader.Error("conflicting-keys", "when", $"{reader.Owner} has both `at` and `when`", "one of the two a step");
        if (!reader.Has("at") && !reader.Has("when"))
            reader.Reading.Diagnostics.Error("missing-key", reader.Place, $"{reader.Owner} has neither `at` nor `when`", "at: 5 min, or when: {bus: main_bus, below: 12.5 V, for: 60 s}");
        if (!reader.Has("when"))
            return new AtTime(Duration.FromSeconds(reader.Quantity("at") ?? 0));
        if (reader.Mapping("when", ScenarioKeys.When) is not { } when)
            return new AtTime(Duration.Zero);
        return new WhenBelow(
            when.RequiredText("bus"),
            Voltage.FromVolts(when.RequiredQuantity("below")),
            Duration.FromSeconds(when.Quantity("for") ?? 0));
    }

    private IEnumerable<TimelineAction> Actions(MappingReader step, MappingEntry entry)
    {
        if (VerbOf(entry.Key.Value) is not { } verb)
            return [];
        return NameList.Of(step, entry.Key.Value)
            .SelectMany(target => Targets(verb, target))
            .Select(target => new TimelineAction(verb, target));
    }

    private IEnumerable<string> Targets(ActionVerb verb, string target)
    {
        if (verb is not (ActionVerb.Shed or ActionVerb.Connect))
            return [target];
        return target switch
        {
            "all" => loads.Select(load => load.Name),
            "essential" => loads.Where(load => load.IsEssential).Select(load => load.Name),
            "non_essential" => loads.Where(load => !load.IsEssential).Select(load => load.Name),
            _ => [target],
        };
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
        _ => null,
    };
}
