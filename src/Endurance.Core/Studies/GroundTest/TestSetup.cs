using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.GroundTest;

/// <summary>How the aircraft stands for one point: the scenario as it is then, and the sentences that bring it there.</summary>
/// <param name="Scenario">Contacts, loads and sources as set.</param>
/// <param name="Steps">What no state of the scenario can say: parts disconnected.</param>
/// <param name="Sentences">For whoever sets it up.</param>
internal sealed record TestSetup(Scenario Scenario, ImmutableArray<TimelineAction> Steps, ImmutableArray<string> Sentences)
{
    public const string SupplyName = "bench supply";
    private const string ResistorName = "test resistor";

    /// <summary>Alternators and chargers off, each load that is on at its full draw.</summary>
    public static TestSetup EngineStopped(Scenario scenario) => new(
        scenario with
        {
            Alternators = [.. scenario.Alternators.Select(alternator => alternator with { IsOn = false, Field = null })],
            Chargers = [.. scenario.Chargers.Select(charger => charger with { IsOn = false })],
            Loads = [.. scenario.Loads.Select(load => load with { Duty = 1 })],
        },
        [],
        [scenario.Chargers.IsEmpty ? "Engine stopped, alternators off." : "Engine stopped, alternators and chargers off."]);

    public TestSetup Say(string sentence) => this with { Sentences = Sentences.Add(sentence) };

    /// <summary>A step on top of the others, once.</summary>
    public TestSetup With(ActionVerb verb, string part) => Steps.Contains(new TimelineAction(verb, part)) ? this : this with { Steps = Steps.Add(new TimelineAction(verb, part)) };

    /// <summary>These batteries stay connected and no other.</summary>
    public TestSetup WithBatteries(params string[] connected)
    {
        ImmutableArray<string> others = [.. Scenario.Batteries.Select(battery => battery.Name).Except(connected, StringComparer.Ordinal)];
        var kept = connected.Length > 0 ? Say($"Battery connected: {string.Join(", ", connected)}.") : this;
        return others.IsEmpty ? kept : kept.Say($"Battery disconnected: {string.Join(", ", others)}.") with
        {
            Steps = Steps.AddRange(others.Select(name => new TimelineAction(ActionVerb.Fail, name))),
        };
    }

    /// <summary>These loads are on and no other.</summary>
    public TestSetup WithLoads(params string[] on)
    {
        var set = this with { Scenario = Scenario with { Loads = [.. Scenario.Loads.Select(load => load with { IsOn = on.Contains(load.Name, StringComparer.Ordinal) })] } };
        return on.Length == 0 ? set.Say("Every load off.") : set.Say($"On: {string.Join(", ", on)}; every other load off.");
    }

    /// <summary>These feeds conduct and no other.</summary>
    public TestSetup WithFeeds(params string[] closed)
    {
        var turned = Scenario.Selectors.Select(selector => Turned(selector, closed)).ToImmutableArray();
        var isolated = Scenario.Feeds.Where(feed => !closed.Contains(feed.Name, StringComparer.Ordinal)).Select(Isolation.Of).ToImmutableArray();
        var set = this with
        {
            Scenario = Scenario with
            {
                Selectors = turned,
                Feeds = [.. Scenario.Feeds.Select(feed => closed.Contains(feed.Name, StringComparer.Ordinal) ? Isolation.Closed(feed) : Isolation.Of(feed).Feed)],
            },
            Steps = [.. Steps, .. isolated.Where(way => way.IsDisconnected).Select(way => new TimelineAction(ActionVerb.Break, way.Feed.Name))],
        };
        set = turned.Aggregate(set, (said, selector) => said.Say($"Selector {selector.Name} at {selector.At}."));
        set = closed.Length > 0 ? set.Say($"Closed: {string.Join(", ", closed)}.") : set;
        return isolated.GroupBy(way => way.How, StringComparer.Ordinal)
            .Aggregate(set, (said, ways) => said.Say($"{ways.Key}: {string.Join(", ", ways.Select(way => way.Feed.Name))}."));
    }

    /// <summary>A current-limited supply in place of a battery that cannot reach the bus.</summary>
    public TestSetup WithSupply(string bus)
    {
        var volts = Tolerances.SupplyVolts(Scenario, bus);
        Alternator supply = new()
        {
            Name = SupplyName,
            Bus = bus,
            Setpoint = Voltage.FromVolts(volts),
            Rated = Current.FromAmperes(Tolerances.ShortDraw),
            Droop = Resistance.FromMilliohms(10),
        };
        return Say(FormattableString.Invariant($"Bench supply, {volts:0.#} V, on {bus}.")) with { Scenario = Scenario with { Alternators = Scenario.Alternators.Add(supply) } };
    }

    public TestSetup WithResistor(string bus)
    {
        var resistance = Tolerances.TestResistor(Scenario, bus);
        Load resistor = new() { Name = ResistorName, Bus = bus, Demand = new ConstantResistance(resistance) };
        return Say(FormattableString.Invariant($"Test resistor, {resistance.Ohms:0.#} ohm (50 W or more), from {bus} to ground.")) with
        {
            Scenario = Scenario with { Loads = Scenario.Loads.Add(resistor) },
        };
    }

    public TestReadings Measure() => new(Scenario, new Simulator(Scenario).Start(new FailureCase
    {
        Name = "ground test",
        Timeline = Steps.IsEmpty ? [] : [new TimelineStep { Trigger = new AtTime(Duration.Zero), Actions = Steps }],
    }));

    private static Selector Turned(Selector selector, string[] closed) => selector with
    {
        At = selector.Positions.Where(position => closed.Contains(position.Feed, StringComparer.Ordinal)).Select(position => position.Position).FirstOrDefault(selector.At),
    };
}
