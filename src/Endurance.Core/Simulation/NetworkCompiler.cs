using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Simulation;

/// <summary>Turns a validated scenario into numbers.</summary>
internal static class NetworkCompiler
{
    private const double Hysteresis14 = 0.05;
    private const double Hysteresis28 = 0.1;

    public static CompiledNetwork Compile(Scenario scenario)
    {
        var node = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var bus in scenario.Buses)
            node.Add(bus.Name, node.Count);
        var engines = scenario.Engines;
        var coils = scenario.Feeds.Index().Where(feed => feed.Item.Contactor?.Coil is not null).ToArray();
        return new CompiledNetwork
        {
            BusNames = [.. scenario.Buses.Select(bus => bus.Name)],
            Cutoffs = [.. scenario.Buses.Select(bus => bus.Cutoff?.Volts ?? 0)],
            Batteries = CompileBatteries(scenario, node),
            Alternators = [.. scenario.Alternators.Select(alternator => new CompiledAlternator(
                alternator.Name, node[alternator.Bus], alternator.Setpoint.Volts, alternator.Droop.Ohms, alternator.Rated.Amperes,
                alternator.DrivenBy is null ? -1 : engines.IndexOf(alternator.DrivenBy)))],
            Feeds = [.. scenario.Feeds.Select(feed => new CompiledFeed(feed, node[feed.From], node[feed.To]))],
            Loads = [.. scenario.Loads.Select(load => CompileLoad(load, node[load.Bus], scenario.Buses[node[load.Bus]]))],
            Coils = [.. coils.Select(coil => CompileCoil(coil.Item, node))],
            CoilFeeds = [.. coils.Select(coil => coil.Index)],
            Hysteresis = scenario.System == SystemVoltage.Volts28 ? Hysteresis28 : Hysteresis14,
            Ambient = scenario.Ambient.Kelvin,
        };
    }

    private static CompiledBattery[] CompileBatteries(Scenario scenario, Dictionary<string, int> node)
    {
        var batteries = new CompiledBattery[scenario.Batteries.Length];
        var slot = 0;
        for (var i = 0; i < batteries.Length; i++)
        {
            batteries[i] = new CompiledBattery(scenario.Batteries[i], node[scenario.Batteries[i].Bus], slot);
            slot += batteries[i].StateCount;
        }

        return batteries;
    }

    private static CompiledLoad CompileLoad(Load load, int node, Bus bus) =>
        new(load.Name, node, load.Demand, load.Duty, load.Minimum)
        {
            JudgedAt = (load.Minimum ?? bus.Cutoff ?? Load.LastResortMinimum).Volts,
            Restart = load.Restart?.Volts ?? double.NaN,
            StartUp = load.StartUp.Seconds,
        };

    private static CompiledLoad CompileCoil(Feed feed, Dictionary<string, int> node) =>
        new(feed.Name, node[feed.Contactor!.CoilBus ?? feed.From], feed.Contactor.Coil!, duty: 1, minimum: null)
        {
            JudgedAt = 0,
        };
}
