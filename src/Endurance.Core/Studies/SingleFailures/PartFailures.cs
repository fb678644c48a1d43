using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.SingleFailures;

/// <summary>Lists every way in which every part of a scenario can fail, in the order of the scenario.</summary>
public static class PartFailures
{
    /// <summary>Resistance of a short from a bus to the airframe: a chafed wire on metal (common practice, no source).</summary>
    private static readonly Resistance ShortToGround = Resistance.FromMilliohms(5);

    /// <summary>Set-point of a regulator that has failed to full field, over the right one (common practice, no source).</summary>
    private const double FullField = 1.25;

    public static ImmutableArray<PartFailure> Of(Scenario scenario) =>
    [
        .. scenario.Batteries.SelectMany((_, i) => OfBattery(scenario, i)),
        .. scenario.Alternators.SelectMany((_, i) => OfAlternator(scenario, i)),
        .. scenario.Chargers.Select(charger => new PartFailure(charger.Name, FailureMode.ChargerOff, AtZero(ActionVerb.Fail, charger.Name))),
        .. scenario.Feeds.SelectMany((_, i) => OfFeed(scenario, i)),
        .. scenario.Buses.Select(bus => new PartFailure(bus.Name, FailureMode.BusShorted, (s, c) => (WithShort(s, bus.Name), c))),
        .. scenario.Warnings.Select(warning => new PartFailure(warning.Name, FailureMode.WarningSilent, AtZero(ActionVerb.Fail, warning.Name))),
        .. scenario.FailureCases.SelectMany(OfSteps),
    ];

    private static IEnumerable<PartFailure> OfBattery(Scenario scenario, int i)
    {
        var battery = scenario.Batteries[i];
        yield return new(battery.Name, FailureMode.BatteryOpen, AtZero(ActionVerb.Fail, battery.Name));
        if (battery.Cells is not null)
            yield return new(battery.Name, FailureMode.ShortedCell, AtZero(ActionVerb.ShortCell, battery.Name));
        yield return new(battery.Name, FailureMode.BatteryFlat, (s, c) =>
            (s with { Batteries = s.Batteries.SetItem(i, s.Batteries[i] with { InitialCharge = 0 }) }, c));
    }

    private static IEnumerable<PartFailure> OfAlternator(Scenario scenario, int i)
    {
        var name = scenario.Alternators[i].Name;
        yield return new(name, FailureMode.SourceOff, AtZero(ActionVerb.Fail, name));
        yield return new(name, FailureMode.OverVoltage, (s, c) => (s with
        {
            Alternators = s.Alternators.SetItem(i, s.Alternators[i] with { Setpoint = s.Alternators[i].Setpoint * FullField }),
        }, c));
    }

    private static IEnumerable<PartFailure> OfFeed(Scenario scenario, int i)
    {
        var feed = scenario.Feeds[i];
        if (feed.Diode is not null)
        {
            yield return new(feed.Name, FailureMode.DiodeOpen, Broken(feed.Name));
            yield return new(feed.Name, FailureMode.DiodeShort, AtZero(ActionVerb.Short, feed.Name));
        }

        if (feed.Contactor is not null || feed.Switch is not null)
        {
            yield return new(feed.Name, FailureMode.StuckOpen, Broken(feed.Name));
            yield return new(feed.Name, FailureMode.StuckClosed, (s, c) => (s with { Feeds = s.Feeds.SetItem(i, Closed(s.Feeds[i])) }, Without(c, ActionVerb.Open, feed.Name)));
        }

        if (feed.Breaker is not null || feed.Fuse is not null || feed.FusibleLink is not null)
            yield return new(feed.Name, FailureMode.ProtectionOpen, Broken(feed.Name));
        yield return new(feed.Name, FailureMode.WireOpen, Broken(feed.Name));
    }

    /// <summary>Each step by which somebody acts, left out of its case.</summary>
    private static IEnumerable<PartFailure> OfSteps(FailureCase failureCase)
    {
        foreach (var (i, step) in failureCase.Timeline.Index())
        {
            if (step.Trigger is AtTime { Time.Seconds: 0 } || step.Actions.All(action => action.Verb is ActionVerb.Fail or ActionVerb.Stop))
                continue;
            var what = string.Join(", ", step.Actions.Select(action => action.Target));
            yield return new(what, FailureMode.StepNotDone, (s, c) => (s, c with { Timeline = c.Timeline.RemoveAt(i) }), failureCase.Name);
        }
    }

    private static Func<Scenario, FailureCase, (Scenario Scenario, FailureCase Case)> AtZero(ActionVerb verb, string target) =>
        (s, c) =>
        {
            var kept = Without(c, ActionVerb.Restore, target);
            return (s, kept with { Timeline = kept.Timeline.Insert(0, Step(verb, target)) });
        };

    private static Func<Scenario, FailureCase, (Scenario Scenario, FailureCase Case)> Broken(string feed) => AtZero(ActionVerb.Break, feed);

    private static TimelineStep Step(ActionVerb verb, string target) =>
        new() { Trigger = new AtTime(Duration.Zero), Actions = [new TimelineAction(verb, target)] };

    /// <summary>The case without one verb on one part; a feed's contactor, switch and breaker count as the feed.</summary>
    private static FailureCase Without(FailureCase failureCase, ActionVerb verb, string target) => failureCase with
    {
        Timeline = [.. failureCase.Timeline.Select(step => step with
        {
            Actions = [.. step.Actions.Where(action => action.Verb != verb || !Concerns(action.Target, target))],
        })],
    };

    private static bool Concerns(string target, string part) =>
        string.Equals(target, part, StringComparison.Ordinal) || target.StartsWith(part + ".", StringComparison.Ordinal);

    private static Feed Closed(Feed feed) => feed with
    {
        Switch = feed.Switch is { } contact ? contact with { IsClosed = true } : null,
        Contactor = feed.Contactor is { } contactor ? contactor with { IsClosed = true } : null,
    };

    private static Scenario WithShort(Scenario scenario, string bus) => scenario with
    {
        Loads = scenario.Loads.Add(new Load { Name = "short to ground", Bus = bus, Demand = new ConstantResistance(ShortToGround) }),
    };
}
