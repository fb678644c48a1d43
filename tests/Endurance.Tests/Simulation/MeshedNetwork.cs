using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>A network drawn at random, the same one for the same seed: a tree of feeds with extra loops, sources and loads of every kind.</summary>
internal static class MeshedNetwork
{
    public static Scenario Of(int seed, int mostBuses = 8)
    {
        var random = new Random(seed);
        var count = random.Next(1, mostBuses + 1);
        var network = Scenario() with
        {
            Buses = [.. Enumerable.Range(0, count).Select(i => Bus(Name("bus", i)))],
            Batteries = [.. Enumerable.Range(0, random.Next(1, 4)).Select(i => BatteryAt(random, Name("battery", i), Any(random, count)))],
            Feeds = Feeds(random, count),
        };
        if (random.Next(3) == 0)
            network = network with { Alternators = [Alternator("alternator", Any(random, count), Between(random, 12, 14.5), Between(random, 1, 30), Between(random, 2, 40))] };
        return network with { Loads = [.. Enumerable.Range(0, random.Next(1, 2 * count)).Select(i => LoadAt(random, Name("load", i), Any(random, count)))] };
    }

    private static ImmutableArray<Feed> Feeds(Random random, int count)
    {
        var feeds = ImmutableArray.CreateBuilder<Feed>();
        for (var i = 1; i < count; i++)
            feeds.Add(FeedBetween(random, Name("feed", i), i, random.Next(i)));
        for (var i = 0; count > 2 && i < random.Next(3); i++)
        {
            var from = random.Next(count);
            feeds.Add(FeedBetween(random, Name("loop", i), from, (from + random.Next(1, count)) % count));
        }

        return feeds.ToImmutable();
    }

    private static Feed FeedBetween(Random random, string name, int a, int b)
    {
        var (from, to) = random.Next(2) == 0 ? (a, b) : (b, a);
        Diode? diode = random.Next(5) switch
        {
            0 => Schottky(Math.Pow(10, Between(random, -6, 2)), Between(random, 1, 1.8), Between(random, 1, 20)),
            1 => new IdealDiodeController
            {
                OnResistance = Resistance.FromMilliohms(Between(random, 1, 10)),
                RegulatedDrop = Voltage.FromVolts(random.Next(2) * 0.02),
            },
            _ => null,
        };
        return Feed(name, Name("bus", from), Name("bus", to), Math.Pow(10, Between(random, -0.5, 2.5)), diode);
    }

    private static Battery BatteryAt(Random random, string name, string bus) =>
        Battery(name, bus, 10, 20, 1, PiecewiseLinear.Constant(Between(random, 11, 13)), PiecewiseLinear.Constant(Math.Pow(10, Between(random, 0.7, 2)))) with
        {
            InitialCharge = Between(random, 0.3, 1),
            ChargeAcceptancePerHour = random.Next(2) == 0 ? Between(random, 0.1, 2) : null,
        };

    private static Load LoadAt(Random random, string name, string bus) => random.Next(5) switch
    {
        0 => Amperes(name, bus, Between(random, 0.1, 8)),
        1 => Ohms(name, bus, Math.Pow(10, Between(random, 0.3, 2))),
        _ => Watts(name, bus, Math.Pow(10, Between(random, 0, 3))),
    };

    private static string Any(Random random, int count) => Name("bus", random.Next(count));

    private static string Name(string kind, int i) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{kind}_{i}");

    private static double Between(Random random, double low, double high) => low + ((high - low) * random.NextDouble());
}
