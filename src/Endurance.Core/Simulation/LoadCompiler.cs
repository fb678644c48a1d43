using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Simulation;

/// <summary>Turns loads, coils and fields into numbers.</summary>
internal static class LoadCompiler
{
    public static CompiledLoad Compile(Load load, Scenario scenario, Nodes nodes)
    {
        var minimum = load.Minimum?.Volts ?? 0;
        var conductors = load.BranchResistance.Ohms;
        var cutoff = scenario.Buses.First(bus => string.Equals(bus.Name, load.Bus, StringComparison.Ordinal)).Cutoff;
        return new CompiledLoad
        {
            Name = load.Name,
            Node = nodes.Supply(load),
            Ground = nodes.Ground(load.Return),
            Demand = new CompiledDemand(load.Demand, load.Duty, minimum, conductors),
            Inrush = load.Inrush is { } inrush ? new CompiledDemand(new ConstantCurrent(inrush.Current), 1, minimum, conductors) : null,
            InrushLasts = load.Inrush?.Lasts.Seconds ?? 0,
            Minimum = minimum,
            JudgedAt = (load.Minimum ?? cutoff ?? Load.LastResortMinimum).Volts,
            Restart = load.Restart?.Volts ?? double.NaN,
            StartUp = load.StartUp.Seconds,
            Needs = [.. load.Needs.Select(need => scenario.Loads.Index().First(other => string.Equals(other.Item.Name, need, StringComparison.Ordinal)).Index)],
        };
    }

    public static CompiledCoil CompileCoil(Feed feed, int index, Nodes nodes)
    {
        var contactor = feed.Contactor!;
        var node = nodes.Bus(contactor.CoilBus ?? feed.From);
        return new CompiledCoil
        {
            Feed = index,
            Node = node,
            Holding = contactor.Coil is { } coil ? Draw(feed.Name, node, coil) : null,
            PullingIn = contactor.PullInCurrent is { } current ? Draw(feed.Name, node, new ConstantCurrent(current)) : null,
            PullsInAbove = contactor.PullsInAbove?.Volts ?? double.NegativeInfinity,
            DropsOutBelow = contactor.DropsOutBelow?.Volts ?? double.NegativeInfinity,
            IsNormallyClosed = contactor.IsNormallyClosed,
        };
    }

    public static CompiledLoad? CompileField(Alternator alternator, Nodes nodes) =>
        alternator.Field is { } field ? Draw(alternator.Name, nodes.Bus(field.Bus), new ConstantCurrent(field.Current)) : null;

    private static CompiledLoad Draw(string name, int node, Demand demand) =>
        new() { Name = name, Node = node, Demand = new CompiledDemand(demand, 1, 0, 0) };
}
