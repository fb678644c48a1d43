using Endurance.Components;
using Endurance.Numerics;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>The networks whose answers are known independently; shared with the benchmarks.</summary>
internal static class ReferenceNetworks
{
    private static readonly PiecewiseLinear EmfA = Table((0, 10.5), (5, 11.3), (10, 11.6), (30, 12.0), (60, 12.4), (85, 12.7), (100, 12.9));
    private static readonly PiecewiseLinear EmfB = Table((0, 10.2), (5, 11.0), (10, 11.3), (30, 11.75), (60, 12.1), (85, 12.4), (100, 12.6));
    private static readonly PiecewiseLinear ResistanceA = Table((0, 30), (20, 18), (100, 12));
    private static readonly PiecewiseLinear ResistanceB = Table((0, 90), (20, 55), (100, 40));
    private static readonly JunctionDiode DiodeS = Schottky(microamperes: 20, ideality: 1.05, milliohms: 6);

    public static Scenario OneBatteryConstantCurrent => Scenario() with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", 12, 20, 1.2, EmfA, PiecewiseLinear.Constant(20), 0.9)],
        Loads = [Amperes("load", "bus", 6, minimum: 5)],
    };

    public static Scenario OneBatteryConstantPower => Scenario() with
    {
        Buses = [Bus("bus", 9.5)],
        Batteries = [Battery("battery", "bus", 12, 20, 1.2, EmfA, PiecewiseLinear.Constant(50), 0.9)],
        Loads = [Watts("load", "bus", 80, minimum: 9)],
    };

    public static Scenario TwoBatteriesTwoDiodes => Scenario() with
    {
        Buses = [Bus("bus1"), Bus("bus2"), Bus("bus", 10.4)],
        Batteries = [Battery("b1", "bus1", 14, 20, 1.18, EmfA, ResistanceA, 0.9), Battery("b2", "bus2", 9, 20, 1.2, EmfB, ResistanceB, 0.9)],
        Feeds = [Feed("d1", "bus1", "bus", 8, DiodeS), Feed("d2", "bus2", "bus", 12, DiodeS)],
        Loads = [Amperes("amperes", "bus", 3, minimum: 6), Watts("watts", "bus", 50, minimum: 9), Ohms("ohms", "bus", 24)],
    };

    public static Scenario MainAndEssential => Scenario() with
    {
        Buses = [Bus("battery_bus"), Bus("main", 10.8), Bus("essential", 10.5), Bus("backup_bus")],
        Batteries = [Battery("main_battery", "battery_bus", 20, 20, 1.15, EmfA, ResistanceA, 0.9), Battery("backup", "backup_bus", 19, 20, 1.2, EmfB, ResistanceB, 0.9)],
        Alternators = [Alternator("alternator", "main", 14.2, 20, 60)],
        Feeds =
        [
            Feed("master", "battery_bus", "main", 5),
            Feed("normal", "main", "essential", 6, DiodeS),
            Feed("backup_feed", "backup_bus", "essential", 12, DiodeS),
        ],
        Loads =
        [
            Watts("main_watts", "main", 70, 9), Amperes("main_amperes", "main", 4, 6), Ohms("main_ohms", "main", 6),
            Watts("essential_watts", "essential", 50, 9), Amperes("essential_amperes", "essential", 1.5, 6), Ohms("essential_ohms", "essential", 30),
        ],
    };

    public static FailureCase AlternatorFails => Case(At(0, (ActionVerb.Fail, "alternator")));
}
