using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.GroundTest;

/// <summary>A timed discharge of the case that has to last longest, with volts to compare every five minutes.</summary>
internal static class EnduranceRun
{
    private static readonly Duration Interval = Duration.FromMinutes(5);
    private static readonly Duration WithoutRequirement = Duration.FromMinutes(30);

    /// <summary>The points, when the run ends, and why it could not be predicted to its end.</summary>
    public static (ImmutableArray<TestPoint> Points, ImmutableArray<string> StopRule, ImmutableArray<LeftOut> LeftOut) Of(Scenario scenario, CancellationToken cancellation)
    {
        if (scenario.Batteries.IsEmpty)
            return ([], ["There is no battery, so nothing to run down."], []);
        var failureCase = scenario.FailureCases.Where(CanBeRun).MaxBy(failure => Asked(scenario, failure).Seconds) ?? new FailureCase { Name = "engine stopped" };
        var asked = Asked(scenario, failureCase);
        var run = new Simulator(scenario).RunUntilBreakOff(WithoutEngine(scenario, failureCase), new SimulationOptions { SampleInterval = Interval }, cancellation);
        var samples = Samples(run.Trace!);
        ImmutableArray<LeftOut> leftOut = run.BreakOff is { } broken ? [new LeftOut($"timed run of {LeftOut.Case(failureCase.Name)}", broken)] : [];
        if (samples.IsEmpty)
            return ([], [$"There is no timed run: not even the start of {failureCase.Name} can be predicted."], leftOut);
        var (end, why) = End(scenario, failureCase, run.Trace!, samples, asked);
        if (run.BreakOff is { } breakOff && end > breakOff.Time.Minutes)
            (end, why) = (samples[^1].Minute, "it is predicted no further");
        else
            leftOut = [];
        return ([.. samples.TakeWhile(sample => sample.Minute <= end).Select(sample => Point(scenario, failureCase, run, sample))], Rule(scenario, failureCase, end, why), leftOut);
    }

    /// <summary>Nothing on the ground stands for an engine or its alternators.</summary>
    public static bool IsOfEngine(Scenario scenario, TimelineAction action) =>
        scenario.Engines.Contains(action.Target, StringComparer.Ordinal) || scenario.Alternators.Any(alternator => string.Equals(alternator.Name, action.Target, StringComparison.Ordinal));

    /// <summary>Nobody shorts a cell to try it.</summary>
    private static bool CanBeRun(FailureCase failureCase) =>
        !failureCase.Timeline.Any(step => step.Actions.Any(action => action.Verb == ActionVerb.ShortCell));

    private static Duration Asked(Scenario scenario, FailureCase failureCase) => scenario.Requirements
        .Where(requirement => requirement.AppliesTo(failureCase)).Select(requirement => requirement.Endure)
        .DefaultIfEmpty(WithoutRequirement < scenario.Horizon ? WithoutRequirement : scenario.Horizon).MaxBy(endure => endure.Seconds);

    private static FailureCase WithoutEngine(Scenario scenario, FailureCase failureCase) => failureCase with
    {
        Timeline =
        [
            new TimelineStep
            {
                Trigger = new AtTime(Duration.Zero),
                Actions = [.. scenario.Alternators.Select(alternator => new TimelineAction(ActionVerb.Fail, alternator.Name))],
            },
            .. failureCase.Timeline.Select(step => step with { Actions = [.. step.Actions.Where(action => !IsOfEngine(scenario, action) && !IsCranking(scenario, action))] }),
        ],
    };

    private static bool IsCranking(Scenario scenario, TimelineAction action) => action.Verb == ActionVerb.Connect && PointMaker.IsShort(scenario, action.Target);

    /// <summary>Every five minutes; of an instant at which something jumps, the sample after it.</summary>
    private static ImmutableArray<(int Minute, int Index)> Samples(Trace trace) =>
    [
        .. trace.Seconds.Select((seconds, i) => (Steps: seconds / Interval.Seconds, Index: i))
            .Where(sample => Math.Abs(sample.Steps - Math.Round(sample.Steps)) < 1e-9)
            .GroupBy(sample => (int)Math.Round(sample.Steps))
            .Select(group => (group.Key * (int)Interval.Minutes, group.Last().Index)),
    ];

    /// <summary>Taken off the bus by the last step before; what its bus has says nothing of it then.</summary>
    private static bool IsDisconnected(FailureCase failureCase, Battery battery, int minute) => failureCase.Timeline
        .Select(step => (Time: (step.Trigger as AtTime)?.Time.Minutes, Verb: step.Actions.LastOrDefault(action => string.Equals(action.Target, battery.Name, StringComparison.Ordinal))?.Verb))
        .Where(step => step.Time <= minute && step.Verb is not null).OrderBy(step => step.Time)
        .LastOrDefault().Verb == ActionVerb.Fail;

    private static (double Minutes, string Why) End(Scenario scenario, FailureCase failureCase, Trace trace, ImmutableArray<(int Minute, int Index)> samples, Duration asked)
    {
        foreach (var (minute, i) in samples.Where(sample => sample.Minute <= asked.Minutes))
        {
            foreach (var (b, battery) in scenario.Batteries.Index())
            {
                if (trace.BatteryCharge[b].Values[i] < Tolerances.LeastCharge)
                    return (minute, FormattableString.Invariant($"{battery.Name} is then predicted to be below {Tolerances.LeastCharge * 100:0} % charge"));
                var volts = trace.BusVolts.First(bus => string.Equals(bus.Name, battery.Bus, StringComparison.Ordinal)).Values[i];
                var stop = Tolerances.StopVolts(scenario, battery.Bus);
                if (volts < stop && !IsDisconnected(failureCase, battery, minute))
                    return (minute, FormattableString.Invariant($"{battery.Bus} is then predicted to be below {stop:0.0} V"));
            }
        }

        return (asked.Minutes, "that is what is asked of the case");
    }

    private static ImmutableArray<string> Rule(Scenario scenario, FailureCase failureCase, double end, string why) =>
    [
        FormattableString.Invariant($"Run {failureCase.Name} until {end:0.#} min: {why}."),
        FormattableString.Invariant($"End it at once when the volts of any battery fall below {Stops(scenario)}, when a battery becomes warm, or when a load stops that the plan has running."),
        "Do not run a lead-acid battery flat to see how long it lasts: compare the volts on the way. Recharge straight afterwards, as its maker says.",
    ];

    /// <summary>One figure for all batteries, or each battery's own where a converter stands between them.</summary>
    private static string Stops(Scenario scenario)
    {
        var stops = scenario.Batteries.Select(battery => (battery.Name, Volts: Tolerances.StopVolts(scenario, battery.Bus))).ToList();
        return stops.TrueForAll(stop => stop.Volts == stops[0].Volts)
            ? FormattableString.Invariant($"{stops[0].Volts:0.0} V")
            : "its own end: " + string.Join(", ", stops.Select(stop => FormattableString.Invariant($"{stop.Name} {stop.Volts:0.0} V")));
    }

    private static TestPoint Point(Scenario scenario, FailureCase failureCase, SimulationResult run, (int Minute, int Index) sample)
    {
        ImmutableArray<string> steps =
        [
            .. run.Events.Where(happened => happened.Kind == EventKind.Step && happened.Time.Minutes <= sample.Minute && happened.Time.Minutes > sample.Minute - Interval.Minutes)
                .Select(happened => FormattableString.Invariant($"At {happened.Time.Minutes:0.#} min: {happened.What}.")),
        ];
        var setup = new TestSetup(scenario, [], sample.Minute > 0 ? ["The run goes on.", .. steps] : ["Engine stopped; batteries charged as the scenario says.", "Contacts and loads as drawn; loads with a duty worked at their duty.", .. steps]);
        return PointMaker.Make(
            TestGroup.EnduranceRun,
            FormattableString.Invariant($"{failureCase.Name}, {sample.Minute} min"),
            [failureCase.Name],
            setup,
            [
                .. run.Trace!.BusVolts.Where(bus => bus.Values[sample.Index] >= 1)
                    .Select(bus => new ExpectedReading(bus.Name, ReadingKind.BusVolts, bus.Values[sample.Index], Tolerances.Volts(scenario, bus.Name))),
            ]) with { Setup = null };
    }
}
