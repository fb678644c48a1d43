using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using FsCheck.Xunit;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Properties;

/// <summary>Changes to a description that must not change what happens.</summary>
public sealed class NetworkSymmetries
{
    /// <summary>An event is located to 1 ms of its instant on the dense output, and what follows it moves along.</summary>
    private const double Minutes = 1e-4;

    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(60221,1023)", MaxTest = 150)]
    public void Order_OfThePartsShuffled_ChangesNoMinute(RandomNetwork drawn)
    {
        var random = new Random(drawn.Seed);
        ImmutableArray<T> Shuffle<T>(ImmutableArray<T> parts)
        {
            var copy = parts.ToArray();
            random.Shuffle(copy);
            return [.. copy];
        }

        var shuffled = drawn.Scenario with
        {
            Buses = Shuffle(drawn.Scenario.Buses),
            Batteries = Shuffle(drawn.Scenario.Batteries),
            Feeds = Shuffle(drawn.Scenario.Feeds),
            Loads = Shuffle(drawn.Scenario.Loads),
        };

        AssertSame(drawn.Scenario.Run(drawn.FailureCase), shuffled.Run(drawn.FailureCase), Minutes);
    }

    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(16180,33989)", MaxTest = 150)]
    public void Wire_SplitByABusInTheMiddle_ChangesNoMinute(RandomNetwork drawn)
    {
        // A bus that nothing draws from floats behind a diode by the picosiemens to ground, of which the middle bus brings one more.
        var scenario = drawn.Scenario with { Loads = [.. drawn.Scenario.Loads, .. drawn.Scenario.Buses.Select(bus => Ohms($"bleed_{bus.Name}", bus.Name, 1000))] };
        var wires = scenario.Feeds.Where(feed => feed.Wire is not null).ToArray();
        if (wires.Length == 0)
            return;
        var whole = wires[drawn.Seed % wires.Length];
        var half = Wire(whole.Wire!.Resistance.Milliohms / 2);
        var split = scenario with
        {
            Buses = [.. scenario.Buses, Bus("middle")],
            Feeds = [.. scenario.Feeds.Select(feed => feed == whole ? feed with { To = "middle", Wire = half } : feed), new Feed { Name = "rest", From = "middle", To = whole.To, Wire = half }],
        };

        AssertSame(scenario.Run(drawn.FailureCase), split.Run(drawn.FailureCase), Minutes);
    }

    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(27182,81829)", MaxTest = 150)]
    public void Tolerance_Halved_MovesNoMinuteByAHundredth(RandomNetwork drawn)
    {
        var options = new SimulationOptions();

        var coarse = drawn.Scenario.Run(drawn.FailureCase, options);
        var fine = drawn.Scenario.Run(drawn.FailureCase, options with { Tolerance = options.Tolerance / 2 });

        AssertSame(coarse, fine, 0.005);
    }

    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(14142,13563)", MaxTest = 150)]
    public void VoltsAndAmperes_Doubled_ChangeNoMinute(RandomNetwork drawn)
    {
        // All resistances stay; the hysteresis of a 28 V system is twice that of a 14 V one. Restarts have a fixed sag and are left out,
        // and every load gets a minimum, since the last resort of 1 V is fixed too.
        var plain = drawn.Scenario with
        {
            Loads = [.. drawn.Scenario.Loads.Select(load => load with { Restart = null, Minimum = load.Minimum ?? Voltage.FromVolts(6) })],
            Feeds = [.. drawn.Scenario.Feeds.Select(feed => feed with { Diode = feed.Diode is JunctionDiode diode ? diode with { HeatPath = null } : feed.Diode })],
        };

        AssertSame(plain.Run(drawn.FailureCase), Doubled(plain).Run(Doubled(drawn.FailureCase)), 2e-3);
    }

    private static Scenario Doubled(Scenario scenario) => scenario with
    {
        System = SystemVoltage.Volts28,
        Buses = [.. scenario.Buses.Select(bus => bus with { Cutoff = bus.Cutoff * 2 })],
        Batteries = [.. scenario.Batteries.Select(battery => battery with { RatedCapacity = battery.RatedCapacity * 2, Emf = battery.Emf.Scaled(2) })],
        Alternators = [.. scenario.Alternators.Select(alternator => alternator with { Setpoint = alternator.Setpoint * 2, Rated = alternator.Rated * 2 })],
        Feeds = [.. scenario.Feeds.Select(feed => feed with { Diode = Doubled(feed.Diode), Contactor = Doubled(feed.Contactor) })],
        Loads = [.. scenario.Loads.Select(load => load with { Minimum = load.Minimum * 2, Demand = Doubled(load.Demand) })],
    };

    private static Demand Doubled(Demand demand) => demand switch
    {
        ConstantCurrent current => new ConstantCurrent(current.Current * 2),
        ConstantPower power => new ConstantPower(power.Power * 4),
        _ => demand,
    };

    private static Contactor? Doubled(Contactor? contactor) =>
        contactor is { Coil: { } coil } ? contactor with { Coil = Doubled(coil) } : contactor;

    private static Diode? Doubled(Diode? diode) => diode switch
    {
        JunctionDiode junction => junction with { SaturationCurrent = junction.SaturationCurrent * 2, Ideality = junction.Ideality * 2 },
        IdealDiodeController controller => controller with { RegulatedDrop = controller.RegulatedDrop * 2 },
        _ => diode,
    };

    private static FailureCase Doubled(FailureCase failureCase) => failureCase with
    {
        Timeline = [.. failureCase.Timeline.Select(step => step.Trigger is WhenBelow low ? step with { Trigger = low with { Below = low.Below * 2 } } : step)],
    };

    private static void AssertSame(SimulationResult expected, SimulationResult actual, double minutes)
    {
        void Equal(string name, Duration? a, Duration? b)
        {
            Assert.True(a is null == b is null, $"{name}: {a?.Minutes} and {b?.Minutes} min");
            if (a is { } first && b is { } second)
                Assert.True(Math.Abs(first.Minutes - second.Minutes) <= minutes, $"{name}: {first.Minutes} and {second.Minutes} min");
        }

        foreach (var load in expected.Loads)
        {
            var other = actual.Load(load.Name);
            Equal(load.Name, load.TimePowered, other.TimePowered);
            Equal(load.Name + " for good", load.TimeLostForGood, other.TimeLostForGood);
            Assert.Equal(load.LostBecause, other.LostBecause);
        }

        foreach (var bus in expected.Buses)
            Equal(bus.Name, bus.TimeToCutoff, actual.Bus(bus.Name).TimeToCutoff);
        foreach (var battery in expected.Batteries)
            Equal(battery.Name, battery.TimeToExhaustion, actual.Battery(battery.Name).TimeToExhaustion);
    }
}
