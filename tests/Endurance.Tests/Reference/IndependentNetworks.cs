using Endurance.Components;
using Endurance.Numerics;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>
/// Four networks solved by an independent program (network to 1e-12 V, state by an 8th-order Runge-Kutta method at a relative
/// tolerance of 1e-10) and again by two other general-purpose engines, which agree to better than 1e-5.
/// </summary>
[Trait("Kind", "Validation")]
public sealed class IndependentNetworks
{
    private const double Minutes = 0.005;
    private const double Volts = 0.001;

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

    [Fact]
    public void OneBattery_ConstantCurrent_LastsAsSolvedIndependently()
    {
        var run = OneBatteryConstantCurrent.Run();

        Assert.Equal(75.7149, run.Battery("battery").TimeToExhaustion.Minutes(), Minutes);
    }

    [Fact]
    public void OneBattery_ConstantPower_LastsAsSolvedIndependently()
    {
        var run = OneBatteryConstantPower.Run();

        Assert.Equal(12.5821, run.Bus("bus").StartVoltage.Volts, Volts);
        Assert.Equal(6.35825, run.Battery("battery").StartCurrent.Amperes, 1e-4);
        Assert.Equal(65.7841, run.Bus("bus").TimeToCutoff.Minutes(), Minutes);
    }

    [Fact]
    public void TwoBatteries_ThroughTwoDiodes_LastAsSolvedIndependently()
    {
        var run = TwoBatteriesTwoDiodes.Run();
        var atCutoff = (TwoBatteriesTwoDiodes with { Horizon = Endurance.Quantities.Duration.FromMinutes(116.868) }).Run();

        Assert.Equal(12.3581, run.Bus("bus").StartVoltage.Volts, Volts);
        Assert.Equal(7.44530, run.Feed("d1").StartCurrent.Amperes, 1e-4);
        Assert.Equal(0.115559, run.Feed("d2").StartCurrent.Amperes, 1e-4);
        Assert.Equal(116.868, run.Bus("bus").TimeToCutoff.Minutes(), Minutes);
        Assert.Equal(0.02173, atCutoff.Battery("b1").ChargeEnd, 1e-4);
        Assert.Equal(0.08855, atCutoff.Battery("b2").ChargeEnd, 1e-4);
    }

    [Fact]
    public void TwoBatteries_ThroughTwoDiodes_HeatTheDiodesAsSolvedIndependently()
    {
        // The horizon ends the run just after the start, so that the highest watts are those of the start.
        var start = (TwoBatteriesTwoDiodes with { Horizon = Endurance.Quantities.Duration.FromSeconds(0.001) }).Run();

        Assert.Equal(2.92631, start.Feed("d1").HighestDiodePower!.Value.Watts, 1e-4);
        Assert.Equal(0.0272648, start.Feed("d2").HighestDiodePower!.Value.Watts, 1e-5);
    }

    [Fact]
    public void MainAndEssential_AlternatorFails_LastAsSolvedIndependently()
    {
        var run = MainAndEssential.Run(AlternatorFails);

        Assert.Equal(12.6212, run.Bus("main").StartVoltage.Volts, Volts);
        Assert.Equal(12.2280, run.Bus("essential").StartVoltage.Volts, Volts);
        Assert.Equal(4.75153, run.Feed("normal").StartCurrent.Amperes, 1e-4);
        Assert.Equal(1.24505, run.Feed("backup_feed").StartCurrent.Amperes, 1e-4);
        Assert.Equal(60.4339, run.Bus("main").TimeToCutoff.Minutes(), Minutes);
        Assert.Equal(63.3127, run.Battery("main_battery").TimeToExhaustion.Minutes(), Minutes);
        Assert.Equal(118.424, run.Bus("essential").TimeToCutoff.Minutes(), Minutes);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Network_HalvedTolerance_MovesNoMinuteByAHundredth(Scenario scenario, FailureCase failureCase)
    {
        var options = new SimulationOptions();
        var coarse = scenario.Run(failureCase, options);
        var fine = scenario.Run(failureCase, options with { Tolerance = options.Tolerance / 2 });

        foreach (var (a, b) in coarse.Buses.Zip(fine.Buses))
            Assert.Equal(a.TimeToCutoff.Minutes(), b.TimeToCutoff.Minutes(), 0.001);
        foreach (var (a, b) in coarse.Loads.Zip(fine.Loads))
            Assert.Equal(a.TimePowered.Minutes(), b.TimePowered.Minutes(), 0.001);
        Assert.Equal(0, coarse.EnergyResidual, 1e-9);
    }

    public static TheoryData<Scenario, FailureCase> All => new()
    {
        { OneBatteryConstantCurrent, Case() },
        { OneBatteryConstantPower, Case() },
        { TwoBatteriesTwoDiodes, Case() },
        { MainAndEssential, AlternatorFails },
    };
}
