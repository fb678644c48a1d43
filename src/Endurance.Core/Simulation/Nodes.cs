using Endurance.Components;
using Endurance.Scenarios;

namespace Endurance.Simulation;

/// <summary>Numbers the points of a network: buses, then terminals of loads with several inputs, then ground points.</summary>
internal sealed class Nodes
{
    private readonly Dictionary<string, int> buses = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> terminals = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> grounds = new(StringComparer.Ordinal);
    private readonly List<string> names = [];

    public Nodes(Scenario scenario)
    {
        foreach (var bus in scenario.Buses)
            Number(buses, bus.Name);
        foreach (var load in scenario.Loads.Where(load => !load.Inputs.IsEmpty))
            Number(terminals, load.Name);
        FirstGround = names.Count;
        foreach (var ground in scenario.Grounds)
            Number(grounds, ground.Name);
    }

    public IReadOnlyList<string> Names => names;

    public int FirstGround { get; }

    public int Bus(string name) => buses[name];

    /// <summary>Where a load's positive side is: its bus, or its own terminals behind several inputs.</summary>
    public int Supply(Load load) => load.Inputs.IsEmpty ? buses[load.Bus] : terminals[load.Name];

    /// <summary>-1 for the airframe.</summary>
    public int Ground(ReturnPath? path) => path?.To is { } name ? grounds[name] : -1;

    private void Number(Dictionary<string, int> numbers, string name)
    {
        numbers.Add(name, names.Count);
        names.Add(name);
    }
}
