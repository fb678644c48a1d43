using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Tests;
using static Endurance.Tests.Parts;

namespace Endurance.Benchmarks;

/// <summary>A network as large as asked: two batteries and a tree of buses, three from each, every third feed a diode.</summary>
/// <param name="Buses">At least 2.</param>
/// <param name="Loads">In all, spread over the buses but the first; the watts and amperes of the whole network stay the same.</param>
/// <param name="Events">Steps of the timeline, each of which sheds a load or connects it again.</param>
/// <param name="Minutes">Simulated.</param>
internal sealed record GrowthNetwork(int Buses, int Loads, int Events, double Minutes)
{
    private const double WholeWatts = 60;
    private const double WholeAmperes = 4;

    private static readonly PiecewiseLinear Emf = Table((0, 10.8), (10, 11.6), (50, 12.2), (100, 12.8));
    private static readonly PiecewiseLinear Milliohms = Table((0, 30), (100, 12));

    public Scenario Scenario => Parts.Scenario() with
    {
        Horizon = Duration.FromMinutes(Minutes),
        Buses = [.. Enumerable.Range(0, Buses).Select(i => Bus($"bus{i}", 6))],
        Batteries = [Battery("main", "bus0", 40, 20, 1.15, Emf, Milliohms), Battery("backup", "bus1", 12, 20, 1.2, Emf, Milliohms)],
        Feeds = [.. Enumerable.Range(1, Buses - 1).Select(i => Feed($"feed{i}", $"bus{(i - 1) / 3}", $"bus{i}", 2, i % 3 == 1 ? Schottky(20, 1.05, 2) : null))],
        Loads = [.. Enumerable.Range(0, Loads).Select(LoadOf)],
    };

    public FailureCase Case => Parts.Case([.. Enumerable.Range(0, Events).Select(i => At(
        Minutes * (i + 1) / (Events + 1),
        (i % 2 == 0 ? ActionVerb.Shed : ActionVerb.Connect, $"load{i / 2 % Loads}")))]);

    private Load LoadOf(int i)
    {
        var bus = $"bus{1 + (i % (Buses - 1))}";
        return (i % 3) switch
        {
            0 => Watts($"load{i}", bus, 3 * WholeWatts / Loads, 6),
            1 => Amperes($"load{i}", bus, 3 * WholeAmperes / Loads, 6),
            _ => Ohms($"load{i}", bus, 10.0 * Loads),
        };
    }
}
