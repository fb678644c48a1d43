using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>Networks whose only loads are of constant power: without them nothing flows, so that no branch shows its slope.</summary>
public sealed class ConstantPowerAloneTests
{
    private const double Volts = 1e-7;

    [Fact]
    public void Alternator_WithoutABattery_CarriesIt()
    {
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus")],
            Alternators = [Alternator("alternator", "bus", 14, 10, 40)],
            Loads = [Watts("load", "bus", 270, 9)],
        };

        Assert.Equal(Settled(14, 0.01, 270), Start(scenario).Bus("bus").StartVoltage.Volts, Volts);
    }

    [Fact]
    public void FullBattery_WithChargeAcceptance_CarriesIt()
    {
        var scenario = Ramp.Standing(12.8, Watts("load", "bus", 80, 9)) with
        {
            Batteries = [Ramp.Steady(12.8) with { ChargeAcceptancePerHour = 1 }],
        };

        Assert.Equal(Settled(12.8, 0.01, 80), Start(scenario).Bus("bus").StartVoltage.Volts, Volts);
    }

    [Fact]
    public void OverloadedAlternator_LetsTheBatteryComeIn()
    {
        // At 14 V the load asks 43 A of 40 A, and the battery takes 2 A; the only operating point is where the battery gives:
        // 40 A + (12.8 V - v)/50 mohm = 600 W/v, so v = (14.8 V + sqrt((14.8 V)^2 - 120 V^2))/2.
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus")],
            Batteries =
            [
                Ramp.Steady(12.8) with { Resistance = PiecewiseLinear.Constant(0.05), ChargeAcceptancePerHour = 2e-5, InitialCharge = 1e-6 },
            ],
            Alternators = [Alternator("alternator", "bus", 14, 1, 40)],
            Loads = [Watts("load", "bus", 600, 9)],
        };

        Assert.Equal((14.8 + Math.Sqrt((14.8 * 14.8) - 120)) / 2, Start(scenario).Bus("bus").StartVoltage.Volts, Volts);
    }

    [Fact]
    public void TwoSeparateSystems_OfDifferentVoltage_EachCarryTheirs()
    {
        var scenario = Scenario(1) with
        {
            Buses = [Bus("high"), Bus("low"), Bus("own")],
            Batteries =
            [
                Ramp.Steady(12.9, "one", "high") with { ChargeAcceptancePerHour = 1 },
                Ramp.Steady(12.1, "two", "low") with { ChargeAcceptancePerHour = 1 },
            ],
            Alternators = [Alternator("small", "own", 11.5, 10, 20)],
            Loads = [Watts("a", "high", 80, 9), Watts("b", "low", 50, 9), Watts("c", "own", 50, 9)],
        };

        var run = Start(scenario);

        Assert.Equal(Settled(12.9, 0.01, 80), run.Bus("high").StartVoltage.Volts, Volts);
        Assert.Equal(Settled(12.1, 0.01, 50), run.Bus("low").StartVoltage.Volts, Volts);
        Assert.Equal(Settled(11.5, 0.01, 50), run.Bus("own").StartVoltage.Volts, Volts);
    }

    [Fact]
    public void UnloadedBuses_ReadTheirOwnSource()
    {
        var scenario = Scenario(1) with
        {
            Buses = [Bus("high"), Bus("low", 12.5), Bus("own")],
            Batteries = [Ramp.Steady(12.9, "one", "high"), Ramp.Steady(12.1, "two", "low") with { ChargeAcceptancePerHour = 1 }],
            Alternators = [Alternator("small", "own", 11.5, 10, 20)],
            Loads = [Watts("load", "high", 80, 9)],
        };

        var run = Start(scenario);

        Assert.Equal(12.1, run.Bus("low").StartVoltage.Volts, Volts);
        Assert.Equal(11.5, run.Bus("own").StartVoltage.Volts, Volts);
        Assert.Equal(0, run.Bus("low").TimeToCutoff.Minutes());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.02)]
    [InlineData(0.025)]
    public void IdealDiodeController_InTheWay_CarriesIt(double regulated)
    {
        var diode = new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.FromVolts(regulated) };
        var run = Start(Behind(diode, milliohms: null));

        // Ten milliohms in the battery and 4 in the controller, which is fully on at 50 W.
        Assert.Equal(Settled(12, 0.014, 100), run.Bus("far").StartVoltage.Volts, Volts);
    }

    [Theory]
    [InlineData(1e-4)]
    [InlineData(1e-6)]
    [InlineData(1e-8)]
    [InlineData(1e-10)]
    [InlineData(1e-12)]
    [InlineData(1e-14)]
    public void JunctionDiode_OfAnySaturationCurrent_CarriesIt(double saturation)
    {
        var diode = Schottky(saturation * 1e6, 1.05, 6);

        var run = Start(Behind(diode, milliohms: 2));

        var amperes = run.Feed("diode").StartCurrent.Amperes;
        var drop = diode.ForwardVoltageAt(Current.FromAmperes(amperes), Temperature.FromKelvin(300.15)).Volts;
        Assert.Null(run.Load("load").LostBecause);
        Assert.Equal(12 - (0.012 * amperes) - drop, run.Bus("far").StartVoltage.Volts, 1e-6);
        Assert.Equal(100, run.Bus("far").StartVoltage.Volts * amperes, 1e-5);
    }

    [Theory]
    [InlineData(1e-6)]
    [InlineData(1e-12)]
    public void TwoBatteries_ThroughTwoDiodesEach_CarryIt(double saturation)
    {
        var diode = Schottky(saturation * 1e6, 1.8, 6);
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus1"), Bus("bus2"), Bus("middle"), Bus("far")],
            Batteries =
            [
                Ramp.Steady(12.9, "one", "bus1") with { ChargeAcceptancePerHour = 1 },
                Ramp.Steady(12.5, "two", "bus2") with { ChargeAcceptancePerHour = 1 },
            ],
            Feeds = [Feed("d1", "bus1", "middle", 2, diode), Feed("d2", "bus2", "middle", 2, diode), Feed("d3", "middle", "far", 2, diode)],
            Loads = [Watts("load", "far", 60, 5)],
        };

        var run = Start(scenario);

        Assert.Null(run.Load("load").LostBecause);
        Assert.Equal(60, run.Bus("far").StartVoltage.Volts * run.Feed("d3").StartCurrent.Amperes, 1e-5);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0.9)]
    public void Alternator_AtItsLimit_LeavesTheRestToABatteryThatAcceptsLittle(double charge)
    {
        // 20 A at most. 300 W need 21.5 A at 14 V: the bus falls to the battery, which gives the difference: 12.8 - 0.01 (300/v - 20).
        var scenario = Ramp.Standing(12.8, Watts("load", "bus", 300, 9)) with
        {
            Batteries = [Battery("battery", "bus", 20, 20, 1, Table((0, 12.8), (100, 12.8)), Endurance.Numerics.PiecewiseLinear.Constant(10)) with { ChargeAcceptancePerHour = 0.01, InitialCharge = charge }],
            Alternators = [Alternator("alternator", "bus", 14, 10, 20)],
        };

        var run = Start(scenario);

        Assert.Null(run.Load("load").LostBecause);
        Assert.Equal(Settled(13, 0.01, 300), run.Bus("bus").StartVoltage.Volts, 1e-6);
    }

    [Fact]
    public void Alternator_AtItsLimitWithoutABattery_Collapses()
    {
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus")],
            Alternators = [Alternator("alternator", "bus", 14, 10, 20)],
            Loads = [Watts("load", "bus", 300, 9)],
        };

        Assert.Equal(LossReason.VoltageCollapse, Start(scenario).Load("load").LostBecause);
    }

    private static double Settled(double emf, double ohms, double watts) => (emf + Math.Sqrt((emf * emf) - (4 * ohms * watts))) / 2;

    private static Scenario Behind(Diode diode, double? milliohms) => Ramp.Standing(12, Watts("load", "far", 100, 5)) with
    {
        Buses = [Bus("bus"), Bus("far")],
        Feeds = [Feed("diode", "bus", "far", milliohms, diode)],
    };

    private static SimulationResult Start(Scenario scenario) => scenario.For(0.01).Run();
}
