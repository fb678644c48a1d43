using Endurance.Components;
using Endurance.Numerics;
using Endurance.Scenarios;
using Endurance.Simulation;
using FsCheck.Xunit;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Properties;

/// <summary>What must never make endurance shorter or longer, where nothing is shed and nothing drops out.</summary>
public sealed class NetworkMonotony
{
    /// <summary>Two steps of event location.</summary>
    private const double Minutes = 1e-5;

    [Property(Replay = "(31337,4243)", MaxTest = 150)]
    public void Capacity_More_NeverShortensEndurance(int seed)
    {
        var scenario = Isolated(seed);
        var before = Endurance(scenario);
        foreach (var index in Enumerable.Range(0, scenario.Batteries.Length))
        {
            var battery = scenario.Batteries[index];
            var more = scenario with { Batteries = scenario.Batteries.SetItem(index, battery with { RatedCapacity = battery.RatedCapacity * 1.3 }) };
            var after = Endurance(more);
            Assert.True(after >= before - Minutes, $"seed {seed}: {before} min became {after} min with more of {battery.Name}");
        }
    }

    [Property(Replay = "(271,829)", MaxTest = 150)]
    public void Load_More_NeverLengthensEndurance(int seed)
    {
        var scenario = Isolated(seed);
        var before = Endurance(scenario);
        foreach (var extra in new[] { Amperes("extra", "bus", 1), Watts("extra", "bus", 15), Ohms("extra", "bus", 12) })
        {
            var after = Endurance(scenario with { Loads = scenario.Loads.Add(extra) });
            Assert.True(after <= before + Minutes, $"seed {seed}: {before} min became {after} min with {extra.Demand}");
        }
    }

    /// <summary>Up to three batteries, each behind a diode, on one bus with a cutoff; loads without minimum, drawing to the end.</summary>
    private static Scenario Isolated(int seed)
    {
        var random = new Random(seed);
        var count = random.Next(1, 4);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        return Scenario(12) with
        {
            Buses = [Bus("bus", Between(8.5, 10)), .. Enumerable.Range(0, count).Select(i => Bus($"bus{i}"))],
            Batteries =
            [
                .. Enumerable.Range(0, count).Select(i => Battery($"battery{i}", $"bus{i}", Between(4, 20), 20, Between(1, 1.3),
                    Table((0, Between(10, 10.5)), (30, Between(11, 12)), (100, Between(12.2, 13))), PiecewiseLinear.Constant(Between(10, 40)))),
            ],
            Feeds = [.. Enumerable.Range(0, count).Select(i => Feed($"feed{i}", $"bus{i}", "bus", Between(2, 20), Schottky(20, 1.05, 6)))],
            Loads = [Amperes("amperes", "bus", Between(0.5, 6)), Watts("watts", "bus", Between(5, 60)), Ohms("ohms", "bus", Between(5, 50))],
        };
    }

    private static double Endurance(Scenario scenario) => scenario.Run().Bus("bus").TimeToCutoff.Minutes();
}
