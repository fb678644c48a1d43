using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.GroundTest;

/// <summary>Makes a ground test out of a scenario: every source, feed, diode, contact, load and step has a point with a prediction.</summary>
public static class GroundTestStudy
{
    /// <param name="scenario">Without error findings.</param>
    /// <param name="cancellation">Looked at between points.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GroundTestPlan Plan(Scenario scenario, CancellationToken cancellation = default)
    {
        var run = EnduranceRun.Of(scenario, cancellation);
        var points = new List<TestPoint>();
        var leftOut = run.LeftOut.ToList();
        foreach (var (what, made) in InOrder(scenario, run.Points))
        {
            try
            {
                foreach (var point in made.Where(point => !point.Readings.IsEmpty))
                {
                    cancellation.ThrowIfCancellationRequested();
                    points.Add(point with { Number = points.Count + 1 });
                }
            }
            catch (BrokenOffException broken)
            {
                leftOut.Add(new LeftOut(what, broken.BreakOff));
            }
        }

        return new GroundTestPlan
        {
            Title = scenario.Title,
            Objective = "To show that the aircraft is wired as the scenario says, that every source, feed, diode, contact and load does its part, and that the batteries hold their volts as predicted.",
            Conditions = Conditions(scenario),
            Safety = SafetyMeasures.All,
            BuildUp = BuildUp(scenario),
            StopRule = run.StopRule,
            Points = [.. points],
            LeftOut = [.. leftOut],
        };
    }

    /// <summary>What the points are about, and the points, each predicted when it is reached.</summary>
    private static IEnumerable<(string What, IEnumerable<TestPoint> Points)> InOrder(Scenario scenario, ImmutableArray<TestPoint> enduranceRun) =>
    [
        .. scenario.Batteries.Select(battery => On(battery.Name, () => SourcePoints.Rest(scenario, battery))),
        .. scenario.Feeds.Select(feed => On(feed.Name, () => FeedPoints.Conducts(scenario, feed))),
        .. scenario.Loads.Select(load => ($"inputs of {load.Name}", LoadPoints.Inputs(scenario, load))),
        .. scenario.Feeds.Where(feed => feed.Diode is not null).Select(feed => On($"the diode of {feed.Name}", () => FeedPoints.Blocks(scenario, feed))),
        .. scenario.Feeds.Where(feed => FeedPoints.CanOpen(scenario, feed)).Select(feed => On($"the contact of {feed.Name}", () => FeedPoints.Opens(scenario, feed))),
        .. scenario.Loads.Select(load => On(load.Name, () => LoadPoints.Alone(scenario, load))),
        ("all loads together", LoadPoints.Together(scenario)),
        .. scenario.Batteries.Select(battery => On($"{battery.Name} alone", () => SourcePoints.Alone(scenario, battery))),
        .. scenario.Warnings.Select(warning => On(warning.Name, () => SourcePoints.Warns(scenario, warning))),
        .. scenario.FailureCases.Select(failureCase => ($"steps of case {failureCase.Name}", CasePoints.Of(scenario, failureCase))),
        ("timed run", enduranceRun),
        .. scenario.Alternators.Select(alternator => On(alternator.Name, () => SourcePoints.Running(scenario, alternator))),
        .. scenario.Chargers.Select(charger => On(charger.Name, () => SourcePoints.Running(scenario, charger))),
    ];

    private static (string What, IEnumerable<TestPoint> Points) On(string part, Func<TestPoint> make) =>
        ($"the point on {part}", Enumerable.Repeat(make, 1).Select(made => made()));

    private static ImmutableArray<string> Conditions(Scenario scenario) =>
    [
        FormattableString.Invariant($"Predicted for {scenario.Ambient.Celsius:0} degC and batteries charged as the scenario says; test at about that temperature, after hours of rest."),
        .. scenario.Buses.GroupBy(bus => Tolerances.Volts(scenario, bus.Name)).OrderByDescending(level => level.Key).Select((level, i) => FormattableString.Invariant(
            $"{(i > 0 ? $"On {string.Join(", ", level.Select(bus => bus.Name))}: volts" : "Volts")} within {level.Key:0.0#} V, amperes within 10 % or 0.2 A, whichever is more; a bus that nothing feeds, within {Tolerances.DeadVolts(scenario, level.First().Name):0.0#} V of none. Common practice, no source.")),
        "Loads with a duty are held at full draw, except in the timed run.",
        "Measure volts between the bus and airframe ground, amperes with a clamp meter for direct current, zeroed before each reading.",
        "A reading out of tolerance is cleared up before the next point.",
    ];

    private static ImmutableArray<string> BuildUp(Scenario scenario) =>
    [
        "Before any power: every wire traced against the drawing, every fastening tight, resistance from each bus to ground measured with the batteries off.",
        "First one part at a time, then together; first the batteries at rest, last the engine.",
        .. scenario.Batteries.IsEmpty ? ImmutableArray<string>.Empty : ["The first power comes through a current-limited bench supply or a small fuse in place of each battery's own."],
    ];
}
