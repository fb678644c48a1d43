using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Properties;

/// <summary>A network drawn at random, wholly decided by its seed.</summary>
public sealed record RandomNetwork(int Seed, Scenario Scenario, FailureCase FailureCase)
{
    private const int MostBuses = 8;

    public override string ToString() => $"network of seed {Seed}";

    public static RandomNetwork Of(int seed)
    {
        var random = new Random(seed);
        var count = random.Next(2, MostBuses + 1);
        ImmutableArray<Bus> buses = [.. Enumerable.Range(0, count).Select(i => Bus($"bus{i}", random.Next(3) == 0 ? Between(random, 8, 11.5) : null))];
        var scenario = Parts.Scenario(3) with
        {
            Buses = buses,
            Feeds = [.. Feeds(random, count)],
            Batteries = [.. Enumerable.Range(0, random.Next(1, 4)).Select(i => BatteryOf(random, $"battery{i}", $"bus{random.Next(count)}"))],
            Alternators = random.Next(2) == 0 ? [Alternator("alternator", $"bus{random.Next(count)}", Between(random, 13.5, 14.6), Between(random, 1, 20), Between(random, 5, 60))] : [],
            Loads = [.. Enumerable.Range(0, random.Next(1, 6)).Select(i => LoadOf(random, $"load{i}", $"bus{random.Next(count)}"))],
        };
        return new RandomNetwork(seed, scenario, CaseOf(random, scenario));
    }

    private static double Between(Random random, double low, double high) => low + ((high - low) * random.NextDouble());

    private static IEnumerable<Feed> Feeds(Random random, int count)
    {
        for (var i = 1; i < count; i++)
            yield return FeedOf(random, $"feed{i}", $"bus{random.Next(i)}", $"bus{i}");
        for (var i = 0; i < random.Next(3); i++)
        {
            var from = random.Next(count);
            yield return FeedOf(random, $"extra{i}", $"bus{from}", $"bus{(from + 1 + random.Next(count - 1)) % count}");
        }
    }

    private static Feed FeedOf(Random random, string name, string from, string to)
    {
        var diode = DiodeOf(random);
        var reverse = random.Next(3) == 0;
        double? milliohms = diode is not null && random.Next(3) == 0 ? null : Between(random, 1, 60);
        return Feed(name, reverse ? to : from, reverse ? from : to, milliohms, diode) with
        {
            Switch = random.Next(8) == 0 ? new Switch { IsClosed = random.Next(2) == 0 } : null,
            Contactor = random.Next(8) == 0 ? new Contactor { IsClosed = true, Coil = new ConstantCurrent(Current.FromAmperes(0.8)) } : null,
        };
    }

    private static Diode? DiodeOf(Random random) => random.Next(7) switch
    {
        0 => Schottky(20, 1.05, 6) with { Leakage = random.Next(2) == 0 ? Conductance.FromSiemens(1e-4) : default },
        1 => Schottky(20, 1.05, 6) with { HeatPath = Between(random, 1, 8) },
        2 => Schottky(Math.Pow(10, Between(random, -8, 0)), 1.8, 4) with { Kind = SemiconductorKind.Silicon, EnergyGap = 1.11, SaturationExponent = 3 },
        3 => new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.FromVolts(0.02) },
        4 => new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.Zero },
        _ => null,
    };

    private static Battery BatteryOf(Random random, string name, string bus)
    {
        var bottom = Between(random, 9.5, 11);
        var knee = bottom + Between(random, 0.5, 1.2);
        var top = knee + Between(random, 0.5, 1.2);
        return Battery(
            name, bus, Between(random, 3, 25), random.Next(2) == 0 ? 20 : 1, Between(random, 1, 1.3), Table((0, bottom), (Between(random, 5, 40), knee), (100, top)),
            Table((0, Between(random, 20, 90)), (Between(random, 10, 60), Between(random, 10, 40)), (100, Between(random, 8, 30))), Between(random, 0.8, 1)) with
        {
            InitialCharge = random.Next(3) == 0 ? 1 : Between(random, 0.2, 1),
            Health = Between(random, 0.6, 1),
            ChargeAcceptancePerHour = random.Next(2) == 0 ? 1 : null,
        };
    }

    private static Load LoadOf(Random random, string name, string bus)
    {
        double? minimum = random.Next(3) == 0 ? null : Between(random, 7, 11.5);
        var load = random.Next(3) switch
        {
            0 => Amperes(name, bus, Between(random, 0.2, 9), minimum),
            1 => Watts(name, bus, Between(random, 3, 110), minimum),
            _ => Ohms(name, bus, Between(random, 1.5, 30), minimum),
        };
        return minimum is { } volts && random.Next(3) == 0
            ? load with { Restart = Voltage.FromVolts(volts + Between(random, 0.2, 1.5)), StartUp = Duration.FromSeconds(Between(random, 30, 120)) }
            : load with { IsOn = random.Next(8) != 0 };
    }

    private static FailureCase CaseOf(Random random, Scenario scenario)
    {
        var steps = new List<TimelineStep>();
        if (!scenario.Alternators.IsEmpty && random.Next(4) != 0)
            steps.Add(At(random.Next(3) * 5, (ActionVerb.Fail, "alternator")));
        for (var i = 0; i < random.Next(4); i++)
        {
            var action = ActionOf(random, scenario);
            steps.Add(random.Next(3) == 0
                ? When(scenario.Buses[random.Next(scenario.Buses.Length)].Name, Between(random, 10, 12.6), random.Next(2) * 60, action)
                : At(Math.Round(Between(random, 0, 90), 1), action));
        }

        return Case([.. steps]);
    }

    private static (ActionVerb Verb, string Target) ActionOf(Random random, Scenario scenario)
    {
        var load = scenario.Loads[random.Next(scenario.Loads.Length)].Name;
        var feed = scenario.Feeds[random.Next(scenario.Feeds.Length)];
        var battery = scenario.Batteries[random.Next(scenario.Batteries.Length)].Name;
        return random.Next(7) switch
        {
            0 => (ActionVerb.Connect, load),
            1 => (ActionVerb.Break, feed.Name),
            2 => (ActionVerb.Restore, feed.Name),
            3 => (ActionVerb.Fail, battery),
            4 when feed.Diode is not null => (ActionVerb.Short, feed.Name),
            _ => (ActionVerb.Shed, load),
        };
    }
}
