using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Studies.GroundTest;

/// <summary>Loads one by one, then together, then without what is shed.</summary>
internal static class LoadPoints
{
    private const string Seconds = "Draws for seconds only: no longer than 5 s, everybody clear of the propeller, ignition off.";

    /// <summary>A load on each of its supplies in turn; the other supplies must stay dead, which proves the diodes inside it.</summary>
    public static IEnumerable<TestPoint> Inputs(Scenario scenario, Load load) => load.Inputs.Select(input =>
    {
        var path = SupplyPath.To(scenario, input.Bus);
        ImmutableArray<string> others = [.. load.Inputs.Select(other => other.Bus).Where(bus => !Is(bus, input.Bus))];
        var free = path is not null && path.Feeds.All(name => scenario.Feeds.All(feed => !Is(feed.Name, name) || !(others.Contains(feed.To) || others.Contains(feed.From))));
        var setup = TestSetup.EngineStopped(scenario);
        setup = path is not null && free
            ? setup.WithBatteries(path.Battery).WithFeeds([.. path.Feeds]).WithLoads(load.Name)
            : setup.WithBatteries().WithFeeds().WithLoads(load.Name).WithSupply(input.Bus);
        setup = others.Distinct(StringComparer.Ordinal).Aggregate(setup, (with, bus) => with.WithResistor(bus));
        var readings = setup.Measure();
        return PointMaker.Make(
            TestGroup.Conducts,
            $"{load.Name} runs on {input.Bus} and feeds nothing back",
            [load.Name, input.Bus],
            setup,
            [.. others.Prepend(input.Bus).Select(bus => readings.Of(ReadingKind.BusVolts, bus)), readings.Of(ReadingKind.LoadAmperes, load.Name)],
            "Volts on another of its supplies: a diode inside the load is shorted.");
    });

    /// <summary>As drawn where it gets volts so, else by the shortest way.</summary>
    public static TestPoint Alone(Scenario scenario, Load load)
    {
        var setup = Supplies(scenario, load).FirstOrDefault(supplied => supplied.Measure().Amperes(ReadingKind.LoadAmperes, load.Name) > 0)
            ?? Supplies(scenario, load).Last();
        var readings = setup.Measure();
        return PointMaker.Make(
            TestGroup.LoadAlone,
            $"{load.Name} alone",
            [load.Name],
            setup,
            [readings.Of(ReadingKind.BusVolts, load.Bus), readings.Of(ReadingKind.LoadAmperes, load.Name)],
            [.. Remarks(scenario, load, readings.Amperes(ReadingKind.LoadAmperes, load.Name))]);
    }

    public static IEnumerable<TestPoint> Together(Scenario scenario)
    {
        string[] all = [.. scenario.Loads.Where(load => !PointMaker.IsShort(scenario, load.Name)).Select(load => load.Name)];
        if (all.Length == 0)
            yield break;
        yield return AsDrawn(TestGroup.AllLoads, "every load at once", scenario, all);
        var shed = scenario.FailureCases.SelectMany(failure => failure.Timeline).SelectMany(step => step.Actions)
            .Where(action => action.Verb == ActionVerb.Shed).Select(action => action.Target).ToHashSet(StringComparer.Ordinal);
        string[] kept = [.. all.Where(load => !shed.Contains(load) && scenario.Loads.Any(drawn => drawn.IsOn && Is(drawn.Name, load)))];
        ImmutableArray<string> off = [.. scenario.Loads.Select(load => load.Name).Where(shed.Contains)];
        if (!off.IsEmpty)
            yield return AsDrawn(TestGroup.ShedList, "what is left on after everything on the shed lists", scenario, kept, off);
    }

    private static IEnumerable<string> Remarks(Scenario scenario, Load load, double amperes)
    {
        if (PointMaker.IsShort(scenario, load.Name))
            yield return Seconds;
        if (amperes <= 0)
            yield return "No source that can be used with the engine stopped runs it: this point proves only that it stays off.";
    }

    private static TestPoint AsDrawn(TestGroup group, string title, Scenario scenario, string[] on, ImmutableArray<string> shed = default)
    {
        var setup = TestSetup.EngineStopped(scenario).WithLoads(on).Say("Contacts as drawn; batteries connected.");
        var readings = setup.Measure();
        var dead = readings.Dead();
        ImmutableArray<string> remarks =
        [
            .. dead.IsEmpty ? ImmutableArray<string>.Empty : [$"Not powered with the engine stopped: {string.Join(", ", dead)}."],
            .. shed.IsDefaultOrEmpty ? ImmutableArray<string>.Empty : [$"Shed: {string.Join(", ", shed)}."],
        ];
        return PointMaker.Make(group, title, shed.IsDefault ? [.. on] : shed, setup, readings.Everything(), remarks);
    }

    private static IEnumerable<TestSetup> Supplies(Scenario scenario, Load load)
    {
        var stopped = TestSetup.EngineStopped(scenario);
        yield return stopped.WithLoads(load.Name).Say("Contacts as drawn; batteries connected.");
        if (SupplyPath.To(scenario, load.Bus) is { } path)
            yield return stopped.WithBatteries(path.Battery).WithFeeds([.. path.Feeds]).WithLoads(load.Name);
        yield return stopped.WithBatteries().WithFeeds().WithLoads(load.Name).WithSupply(load.Bus);
    }

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
