using Endurance.Components;
using Endurance.Numerics;
using Endurance.Scenarios;

namespace Endurance.Simulation;

/// <summary>Turns a validated scenario into numbers.</summary>
internal static class NetworkCompiler
{
    private const double Hysteresis14 = 0.05;
    private const double Hysteresis28 = 0.1;

    public static CompiledNetwork Compile(Scenario scenario)
    {
        var nodes = new Nodes(scenario);
        var engines = scenario.Engines;
        CompiledFeed[] feeds =
        [
            .. scenario.Feeds.Select(feed => new CompiledFeed(feed, nodes.Bus(feed.From), nodes.Bus(feed.To), nodes.Ground(feed.Return))),
            .. scenario.Loads.SelectMany(load => CompileInputs(load, nodes)),
        ];
        CompiledLoad[] loads = [.. scenario.Loads.Select(load => LoadCompiler.Compile(load, scenario, nodes))];
        CompiledCoil[] coils = [.. scenario.Feeds.Index().Where(feed => feed.Item.Contactor is not null).Select(feed => LoadCompiler.CompileCoil(feed.Item, feed.Index, nodes))];
        CompiledLoad?[] fields = [.. scenario.Alternators.Select(alternator => LoadCompiler.CompileField(alternator, nodes))];
        return new CompiledNetwork
        {
            NodeNames = [.. nodes.Names],
            BusCount = scenario.Buses.Length,
            FirstGround = nodes.FirstGround,
            GroundSiemens = [.. scenario.Grounds.Select(ground => 1 / ground.Resistance.Ohms)],
            Cutoffs = [.. scenario.Buses.Select(bus => bus.Cutoff?.Volts ?? 0)],
            Batteries = CompileBatteries(scenario, nodes),
            Alternators = [.. scenario.Alternators.Select(alternator => CompileAlternator(alternator, nodes, engines.IndexOf(alternator.DrivenBy ?? "")))],
            Chargers = [.. scenario.Chargers.Select(charger => CompileCharger(charger, nodes))],
            Feeds = feeds,
            ListedFeeds = scenario.Feeds.Length,
            Loads = loads,
            Coils = coils,
            Fields = fields,
            Breakers = [.. CompileBreakers(scenario)],
            Hysteresis = scenario.System == SystemVoltage.Volts28 ? Hysteresis28 : Hysteresis14,
            Ambient = scenario.Ambient.Kelvin,
            Elimination = new Elimination(nodes.Names.Count, [.. feeds.SelectMany(Ties), .. Returns([.. loads, .. coils.SelectMany(coil => new[] { coil.Holding, coil.PullingIn }), .. fields])]),
        };
    }

    /// <summary>The nodes whose currents a feed makes depend on each other's volts.</summary>
    private static IEnumerable<(int First, int Second)> Ties(CompiledFeed feed) =>
        feed.Ground < 0 ? [(feed.From, feed.To)] : [(feed.From, feed.To), (feed.From, feed.Ground), (feed.To, feed.Ground)];

    /// <summary>The same of loads that return through a ground point.</summary>
    private static IEnumerable<(int First, int Second)> Returns(IEnumerable<CompiledLoad?> loads) =>
        loads.Where(load => load is { Ground: >= 0 }).Select(load => (load!.Node, load.Ground));

    private static CompiledBattery[] CompileBatteries(Scenario scenario, Nodes nodes)
    {
        var batteries = new CompiledBattery[scenario.Batteries.Length];
        var slot = 0;
        for (var i = 0; i < batteries.Length; i++)
        {
            batteries[i] = new CompiledBattery(scenario.Batteries[i], nodes.Bus(scenario.Batteries[i].Bus), slot);
            slot += batteries[i].StateCount;
        }

        return batteries;
    }

    private static CompiledAlternator CompileAlternator(Alternator alternator, Nodes nodes, int engine) => new(
        alternator.Name, nodes.Bus(alternator.Bus), alternator.Setpoint.Volts, alternator.Droop.Ohms, alternator.Rated.Amperes,
        (alternator.LimitIdle ?? alternator.Rated).Amperes, engine, alternator.TripsAbove?.Volts ?? double.PositiveInfinity,
        alternator.Field is { } field ? nodes.Bus(field.Bus) : -1);

    private static CompiledCharger CompileCharger(Charger charger, Nodes nodes) => new(
        charger.Name, nodes.Bus(charger.From), nodes.Bus(charger.To), charger.Output.Volts, charger.Droop.Ohms, charger.Limit.Amperes,
        charger.Efficiency, charger.CutIn?.Volts ?? double.NegativeInfinity, charger.CutOut?.Volts ?? double.NegativeInfinity);

    private static IEnumerable<CompiledFeed> CompileInputs(Load load, Nodes nodes) =>
        load.Inputs.Select(input => new CompiledFeed(
            new Feed { Name = $"{load.Name} from {input.Bus}", From = input.Bus, To = load.Name, Diode = input.Diode },
            nodes.Bus(input.Bus), nodes.Supply(load), -1));

    private static IEnumerable<CompiledBreaker> CompileBreakers(Scenario scenario)
    {
        foreach (var (i, feed) in scenario.Feeds.Index())
        {
            foreach (var protection in new[] { feed.Breaker, feed.Fuse, feed.FusibleLink })
            {
                if (CompileBreaker(feed.Name, protection, i, -1) is { } breaker)
                    yield return breaker;
            }
        }

        foreach (var (i, load) in scenario.Loads.Index())
        {
            foreach (var protection in new[] { load.Breaker, load.Fuse })
            {
                if (CompileBreaker(load.Name, protection, -1, i) is { } breaker)
                    yield return breaker;
            }
        }
    }

    private static CompiledBreaker? CompileBreaker(string owner, Protection? protection, int feed, int load) =>
        protection?.TimeConstant is { } tau
            ? new(owner, protection.Kind, feed, load, protection.Rating.Amperes, protection.Factor * protection.Factor, tau.Seconds)
            : null;
}
