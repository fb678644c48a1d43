using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Tests.Simulation.Events;
using FsCheck.Xunit;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Properties;

/// <summary>What diodes, resistance and fuses do in any network.</summary>
public sealed class FeedLaws
{
    /// <summary>Amperes: more than any diode here leaks, less than anything that matters.</summary>
    private const double Leak = 1e-3;

    [Property(Replay = "(92653,58979)", MaxTest = 150)]
    public void DeadSource_BehindDiodes_TakesCurrentOnlyThroughAFailedOne(int seed)
    {
        var random = new Random(seed);
        var scenario = Diodes(random);
        var shorted = random.Next(2) == 0 ? random.Next(scenario.Batteries.Length) : -1;
        var run = scenario.Run(shorted < 0 ? Case() : Case(At(random.Next(20), (ActionVerb.Short, $"diode{shorted}"))));
        for (var i = 0; i < scenario.Batteries.Length; i++)
        {
            if (i != shorted)
                Assert.True(run.Batteries[i].LowestCurrent.Amperes > -Leak, $"seed {seed}: {run.Batteries[i].LowestCurrent} into battery{i}");
        }
    }

    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(32384,62643)", MaxTest = 150)]
    public void Resistance_MoreInOneFeed_NeverRaisesItsCurrent(RandomNetwork network)
    {
        // Power loads draw more at fewer volts, and so would a feed to one of them.
        var scenario = network.Scenario with
        {
            Loads = [.. network.Scenario.Loads.Where(load => load.Demand is not ConstantPower).Select(load => load with { Minimum = null, Restart = null })],
            Feeds = [.. network.Scenario.Feeds.Select(feed => feed with { Diode = feed.Diode is JunctionDiode diode ? diode with { HeatPath = null } : feed.Diode })],
        };
        scenario = scenario with { Horizon = Duration.FromSeconds(1) };
        var before = scenario.Run().Feeds;
        for (var i = 0; i < before.Length; i++)
        {
            var feed = scenario.Feeds[i];
            var more = scenario with { Feeds = scenario.Feeds.SetItem(i, feed with { Shunt = Resistance.FromMilliohms(20) }) };
            var after = more.Run().Feeds[i].StartCurrent;
            Assert.True(
                Math.Abs(after.Amperes) <= Math.Abs(before[i].StartCurrent.Amperes) + 1e-6,
                $"{network}: {before[i].StartCurrent} through {feed.Name} became {after} with 20 mohm more");
        }
    }

    [Property(Replay = "(38327,95029)", MaxTest = 100)]
    public void TripTime_AtMoreCurrent_IsNeverLonger(int seed)
    {
        var random = new Random(seed);
        var fuse = new Protection
        {
            Kind = (ProtectionKind)random.Next(3),
            Rating = Current.FromAmperes(1 + (20 * random.NextDouble())),
            Factor = 1 + random.NextDouble(),
            TimeConstant = Duration.FromSeconds(0.5 + (60 * random.NextDouble())),
        };
        var last = double.PositiveInfinity;
        for (var multiple = 0.8; multiple < 8; multiple *= 1.3)
        {
            var current = fuse.Rating * multiple;
            var opened = Opens(fuse, current);
            Assert.True(opened <= last, $"seed {seed}: {opened} s at {current}, {last} s at less");
            Assert.Equal(fuse.TimeToOpen(current)?.Seconds ?? double.PositiveInfinity, opened, 2e-3);
            last = opened;
        }
    }

    /// <summary>Seconds from switching the current on, by simulation.</summary>
    private static double Opens(Protection fuse, Current current)
    {
        var spur = Feed("spur", "bus", "far", 0.1) with
        {
            Breaker = fuse.Kind == ProtectionKind.Breaker ? fuse : null,
            Fuse = fuse.Kind == ProtectionKind.Fuse ? fuse : null,
            FusibleLink = fuse.Kind == ProtectionKind.FusibleLink ? fuse : null,
        };
        var load = new Load { Name = "load", Bus = "far", Demand = new ConstantCurrent(current), IsOn = false };
        var scenario = Ramp.Standing(20, load) with { Buses = [Bus("bus"), Bus("far")], Feeds = [spur] };
        var run = scenario.Run(Case(At(1, (ActionVerb.Connect, "load"))));
        return (run.Protections[0].TimeOpened.Minutes() - 1) * 60;
    }

    /// <summary>Batteries from full to flat, each behind a diode of its own, on a net of buses that only diodes join.</summary>
    private static Scenario Diodes(Random random)
    {
        var batteries = random.Next(2, 5);
        var buses = random.Next(1, 5);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        Diode Any() => random.Next(3) switch
        {
            0 => Schottky(Between(1, 50), 1.05, 6),
            1 => Schottky(1e-3, 1.8, 4) with { Kind = SemiconductorKind.Silicon, EnergyGap = 1.11, SaturationExponent = 3 },
            _ => new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.FromVolts(0.02) },
        };
        return Scenario(2) with
        {
            Buses = [.. Enumerable.Range(0, batteries).Select(i => Bus($"terminal{i}")), .. Enumerable.Range(0, buses).Select(i => Bus($"bus{i}"))],
            Batteries =
            [
                .. Enumerable.Range(0, batteries).Select(i => Battery($"battery{i}", $"terminal{i}", Between(2, 15), 20, 1.2,
                    Table((0, Between(3, 10)), (100, Between(11, 13))), PiecewiseLinear.Constant(Between(10, 60))) with { InitialCharge = Between(0, 1) }),
            ],
            Feeds =
            [
                .. Enumerable.Range(0, batteries).Select(i => Feed($"diode{i}", $"terminal{i}", $"bus{random.Next(buses)}", Between(1, 20), Any())),
                .. Enumerable.Range(1, buses - 1).Select(i => Feed($"tie{i}", $"bus{random.Next(i)}", $"bus{i}", Between(1, 20), Any())),
            ],
            Loads = [.. Enumerable.Range(0, buses).Select(i => random.Next(2) == 0 ? Amperes($"load{i}", $"bus{i}", Between(0.2, 5), 6) : Watts($"load{i}", $"bus{i}", Between(3, 50), 6))],
        };
    }
}
