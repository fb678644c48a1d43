using Endurance.Scenarios;

namespace Endurance.Simulation.Events;

/// <summary>Turns the steps of a failure case into actions by index.</summary>
internal static class TimelineCompiler
{
    public static WaitingStep[] Compile(Scenario scenario, FailureCase failureCase)
    {
        int NodeOf(string bus) => scenario.Buses.Index().First(item => string.Equals(item.Item.Name, bus, StringComparison.Ordinal)).Index;
        return [.. failureCase.Timeline.Select(step =>
            new WaitingStep(step, [.. step.Actions.Select(action => Compile(scenario, action))], NodeOf))];
    }

    private static CompiledAction Compile(Scenario scenario, TimelineAction action)
    {
        var (kind, index) = Find(scenario, action);
        return new CompiledAction(action.Verb, kind, index, action.Target);
    }

    private static (TargetKind Kind, int Index) Find(Scenario scenario, TimelineAction action)
    {
        (TargetKind Kind, IEnumerable<string> Names)[] places =
        [
            (TargetKind.Battery, scenario.Batteries.Select(part => part.Name)),
            (TargetKind.Alternator, scenario.Alternators.Select(part => part.Name)),
            (TargetKind.Engine, scenario.Engines),
            (TargetKind.Load, scenario.Loads.Select(part => part.Name)),
        ];
        foreach (var (kind, names) in places)
        {
            var index = IndexOf(names, action.Target);
            if (index >= 0)
                return (kind, index);
        }

        return FindInFeed(scenario, action);
    }

    private static (TargetKind Kind, int Index) FindInFeed(Scenario scenario, TimelineAction action)
    {
        var dot = action.Target.IndexOf('.', StringComparison.Ordinal);
        var name = dot < 0 ? action.Target : action.Target[..dot];
        var index = IndexOf(scenario.Feeds.Select(feed => feed.Name), name);
        if (index < 0)
            throw new ArgumentException($"No part is named {action.Target}.", nameof(action));
        if (action.Verb is not (ActionVerb.Open or ActionVerb.Close))
            return (TargetKind.Feed, index);
        var feed = scenario.Feeds[index];
        var kind = (dot < 0 ? null : action.Target[(dot + 1)..]) switch
        {
            "contactor" => TargetKind.Contactor,
            "switch" => TargetKind.Switch,
            "breaker" => TargetKind.Breaker,
            null when feed.Contactor is not null => TargetKind.Contactor,
            null when feed.Switch is not null => TargetKind.Switch,
            null when feed.Breaker is not null => TargetKind.Breaker,
            _ => throw new ArgumentException($"{action.Target} is nothing that opens or closes.", nameof(action)),
        };
        return (kind, index);
    }

    private static int IndexOf(IEnumerable<string> names, string name)
    {
        var i = 0;
        foreach (var candidate in names)
        {
            if (string.Equals(candidate, name, StringComparison.Ordinal))
                return i;
            i++;
        }

        return -1;
    }
}
