using Endurance.Scenarios;

namespace Endurance.Simulation.Events;

/// <summary>Turns the steps of a failure case into actions by index.</summary>
internal static class TimelineCompiler
{
    /// <summary>In the order of the file; what undoes a step stands behind it.</summary>
    public static WaitingStep[] Compile(Scenario scenario, FailureCase failureCase) =>
        [.. failureCase.Timeline.SelectMany(step => Compile(scenario, step))];

    public static WarningWatch[] CompileWarnings(Scenario scenario) =>
        [.. scenario.Warnings.Select(warning => new WarningWatch(warning.Name, NodeOf(scenario, warning.Senses), warning.Below.Volts, warning.For.Seconds))];

    private static IEnumerable<WaitingStep> Compile(Scenario scenario, TimelineStep step)
    {
        var undo = step.Lasts is null ? null : new WaitingStep
        {
            Actions = [.. step.Actions.Select(action => Compile(scenario, Inverse(scenario, action)))],
            Trigger = step.Trigger,
            IsUndo = true,
        };
        CompiledAction[] actions = [.. step.Actions.Select(action => Compile(scenario, action))];
        var lasts = step.Lasts?.Seconds ?? 0;
        yield return step.Trigger switch
        {
            AtTime at => new WaitingStep { Actions = actions, Trigger = at, Undo = undo, Lasts = lasts, Due = at.Time.Seconds },
            WhenBelow low => new WaitingStep
            {
                Actions = actions, Trigger = low, Undo = undo, Lasts = lasts, Bus = NodeOf(scenario, low.Bus), Threshold = low.Below.Volts, Hold = low.For.Seconds,
            },
            WhenWarned warned => new WaitingStep
            {
                Actions = actions, Trigger = warned, Undo = undo, Lasts = lasts, Hold = warned.RecognisedAfter.Seconds,
                Warning = IndexOf(scenario.Warnings.Select(warning => warning.Name), warned.Warning),
            },
            _ => throw new ArgumentException("Unknown kind of trigger.", nameof(step)),
        };
        if (undo is not null)
            yield return undo;
    }

    private static int NodeOf(Scenario scenario, string bus) => IndexOf(scenario.Buses.Select(part => part.Name), bus);

    private static TimelineAction Inverse(Scenario scenario, TimelineAction action) => action.Verb switch
    {
        ActionVerb.Fail or ActionVerb.Short or ActionVerb.Break or ActionVerb.ShortCell => action with { Verb = ActionVerb.Restore },
        ActionVerb.Restore => action with { Verb = ActionVerb.Fail },
        ActionVerb.Stop => action with { Verb = ActionVerb.Start },
        ActionVerb.Start => action with { Verb = ActionVerb.Stop },
        ActionVerb.Open => action with { Verb = ActionVerb.Close },
        ActionVerb.Close => action with { Verb = ActionVerb.Open },
        ActionVerb.Shed => action with { Verb = ActionVerb.Connect },
        ActionVerb.Connect => action with { Verb = ActionVerb.Shed },
        ActionVerb.Idle => action with { Verb = ActionVerb.Cruise },
        ActionVerb.Cruise => action with { Verb = ActionVerb.Idle },
        _ => action with { Position = scenario.Selectors.First(selector => string.Equals(selector.Name, action.Target, StringComparison.Ordinal)).At },
    };

    private static CompiledAction Compile(Scenario scenario, TimelineAction action)
    {
        var (kind, index) = Find(scenario, action);
        return new CompiledAction(action.Verb, kind, index, action.Target, action.Position)
        {
            Selection = kind != TargetKind.Selector ? [] : [.. scenario.Selectors[index].Positions.Select(position =>
                (IndexOf(scenario.Feeds.Select(feed => feed.Name), position.Feed), string.Equals(position.Position, action.Position, StringComparison.Ordinal)))],
        };
    }

    private static (TargetKind Kind, int Index) Find(Scenario scenario, TimelineAction action)
    {
        (TargetKind Kind, IEnumerable<string> Names)[] places =
        [
            (TargetKind.Battery, scenario.Batteries.Select(part => part.Name)),
            (TargetKind.Alternator, scenario.Alternators.Select(part => part.Name)),
            (TargetKind.Engine, scenario.Engines),
            (TargetKind.Load, scenario.Loads.Select(part => part.Name)),
            (TargetKind.Charger, scenario.Chargers.Select(part => part.Name)),
            (TargetKind.Warning, scenario.Warnings.Select(part => part.Name)),
            (TargetKind.Selector, scenario.Selectors.Select(part => part.Name)),
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
