using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.GroundTest;

/// <summary>Makes a ground test out of a scenario: every source, feed, diode, contact, load and step has a point with a prediction.</summary>
public static class GroundTestStudy
{
    /// <param name="scenario">Without error findings.</param>
    /// <param name="cancellation">Looked at between points.</param>
    /// <exception cref="ChatteringException">Parts of the scenario switch each other without end.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GroundTestPlan Plan(Scenario scenario, CancellationToken cancellation = default)
    {
        var run = EnduranceRun.Of(scenario, cancellation);
        var points = new List<TestPoint>();
        foreach (var point in InOrder(scenario, run.Points).Where(point => !point.Readings.IsEmpty))
        {
            cancellation.ThrowIfCancellationRequested();
            points.Add(point with { Number = points.Count + 1 });
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
        };
    }

    private static IEnumerable<TestPoint> InOrder(Scenario scenario, ImmutableArray<TestPoint> enduranceRun) =>
    [
        .. scenario.Batteries.Select(battery => SourcePoints.Rest(scenario, battery)),
        .. scenario.Feeds.Select(feed => FeedPoints.Conducts(scenario, feed)),
        .. scenario.Loads.SelectMany(load => LoadPoints.Inputs(scenario, load)),
        .. scenario.Feeds.Where(feed => feed.Diode is not null).Select(feed => FeedPoints.Blocks(scenario, feed)),
        .. scenario.Feeds.Where(feed => FeedPoints.CanOpen(scenario, feed)).Select(feed => FeedPoints.Opens(scenario, feed)),
        .. scenario.Loads.Select(load => LoadPoints.Alone(scenario, load)),
        .. LoadPoints.Together(scenario),
        .. scenario.Batteries.Select(battery => SourcePoints.Alone(scenario, battery)),
        .. scenario.Warnings.Select(warning => SourcePoints.Warns(scenario, warning)),
        .. scenario.FailureCases.SelectMany(failureCase => CasePoints.Of(scenario, failureCase)),
        .. enduranceRun,
        .. scenario.Alternators.Select(alternator => SourcePoints.Running(scenario, alternator)),
        .. scenario.Chargers.Select(charger => SourcePoints.Running(scenario, charger)),
    ];

    private static ImmutableArray<string> Conditions(Scenario scenario) =>
    [
        FormattableString.Invariant($"Predicted for {scenario.Ambient.Celsius:0} degC and batteries charged as the scenario says; test at about that temperature, after hours of rest."),
        FormattableString.Invariant($"Volts within {Tolerances.Volts(scenario):0.0} V, amperes within 10 % or 0.2 A, whichever is more; a bus that nothing feeds, within {Tolerances.DeadVolts(scenario):0.0} V of none. Common practice, no source."),
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
