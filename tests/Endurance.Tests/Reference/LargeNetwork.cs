using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>As large as a light aircraft's wiring gets: 8 buses, 20 feeds, 40 loads.</summary>
internal static class LargeNetwork
{
    public static Scenario Scenario => Parts.Scenario(3) with
    {
        Buses = [.. Enumerable.Range(0, 8).Select(i => Bus($"bus{i}", i > 3 ? 10.5 : null))],
        Batteries =
        [
            Battery("main_battery", "bus0", 18, 20, 1.15, Table((0, 11), (20, 11.9), (100, 12.8)), Table((0, 30), (100, 11))),
            Battery("backup_battery", "bus1", 9, 20, 1.2, Table((0, 10.8), (20, 11.7), (100, 12.7)), Table((0, 60), (100, 25))),
        ],
        Alternators = [Alternator("alternator", "bus2", 14.2, 5, 60)],
        Feeds = [.. Enumerable.Range(0, 20).Select(FeedOf)],
        Loads = [.. Enumerable.Range(0, 40).Select(LoadOf)],
    };

    /// <summary>The alternator fails; half the loads go off in three steps.</summary>
    public static FailureCase AlternatorFails => Case(
        At(0, (ActionVerb.Fail, "alternator")),
        At(3, [.. Enumerable.Range(0, 8).Select(i => (ActionVerb.Shed, $"load{i}"))]),
        When("bus4", 12, 30, [.. Enumerable.Range(8, 8).Select(i => (ActionVerb.Shed, $"load{i}"))]),
        At(40, (ActionVerb.Break, "feed5"), (ActionVerb.Short, "feed12")));

    private static Feed FeedOf(int i)
    {
        // A tree from the first bus to all, then a second and a third way to most.
        var to = 1 + (i % 7);
        var from = i < 7 ? to / 2 : (to + (i / 7) + 1) % 8;
        Diode? diode = (i % 3, i) switch
        {
            (0, _) or (_, 0) => Schottky(20, 1.05, 6) with { HeatPath = 3 },
            (1, > 7) => new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.FromVolts(0.02) },
            _ => null,
        };
        var feed = Feed($"feed{i}", $"bus{from}", $"bus{to}", 3 + i, diode);
        return i % 4 == 1 ? feed with { Breaker = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(40), TimeConstant = Duration.FromSeconds(50) } } : feed;
    }

    private static Load LoadOf(int i)
    {
        var name = $"load{i}";
        var bus = $"bus{1 + (i % 7)}";
        var load = (i % 3) switch
        {
            0 => Watts(name, bus, 4 + (i % 5), 9.5),
            1 => Amperes(name, bus, 0.2 + (0.02 * i), 9),
            _ => Ohms(name, bus, 30 + i, 6),
        };
        return i % 6 == 0 ? load with { Restart = Voltage.FromVolts(11), StartUp = Duration.FromSeconds(30) } : load;
    }
}
