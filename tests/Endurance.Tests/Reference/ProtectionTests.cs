using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>Breakers, fuses, contactors and chargers against closed forms.</summary>
[Trait("Kind", "Validation")]
public sealed class ProtectionTests
{
    private static readonly PiecewiseLinear Stiff = PiecewiseLinear.Constant(1);

    /// <summary>From cold t = tau ln(x^2/(x^2 - m^2)); breaker m 1.25, tau 50 s: 2x in 25 s, 10x in 0.8 s; fuse tau 2 s: 2x in 1.0 s, 6x in 0.09 s (common practice, no source).</summary>
    [Theory]
    [InlineData(ProtectionKind.Breaker, 50, 2, 24.8)]
    [InlineData(ProtectionKind.Breaker, 50, 10, 0.79)]
    [InlineData(ProtectionKind.Fuse, 2, 2, 0.99)]
    [InlineData(ProtectionKind.Fuse, 2, 6, 0.089)]
    public void Protection_FromCold_OpensByItsThermalLaw(ProtectionKind kind, double tau, double multiple, double seconds)
    {
        var scenario = Fused(kind, tau, rating: 10, amperes: 10 * multiple);

        var run = scenario.Run(Case(At(1, (ActionVerb.Connect, "load"))));

        var closedForm = tau * Math.Log(multiple * multiple / ((multiple * multiple) - 1.5625));
        Assert.Equal(closedForm, seconds, 0.01 * seconds + 0.005);
        Assert.Equal(60 + closedForm, run.Load("load").TimePowered!.Value.Seconds, 0.01);
        Assert.Equal(LossReason.FeedOpened, run.Load("load").LostBecause);
    }

    [Fact]
    public void Protection_BelowItsFactor_NeverOpens()
    {
        var run = Fused(ProtectionKind.Fuse, 2, rating: 10, amperes: 12.4).Run(Case(At(1, (ActionVerb.Connect, "load"))));

        Assert.Null(run.Load("load").TimePowered);
    }

    /// <summary>Two ignition boxes of 10 A together behind two 5 A fuses whose paths differ by 0.1 V over 20 mohm each: 7.5 A and 2.5 A, (I +- dV/R)/2; the first fuse opens after 2.37 s, the second, alone with 10 A, 0.90 s later.</summary>
    [Fact]
    public void TwoFuses_OneImbalance_OpensBoth()
    {
        Feed Path(string name, string from) => new()
        {
            Name = name,
            From = from,
            To = "ignition",
            Wire = Wire(20),
            Fuse = new Protection { Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(5), TimeConstant = Duration.FromSeconds(2) },
        };
        var scenario = Scenario(horizonHours: 0.1) with
        {
            Buses = [Bus("high"), Bus("low"), Bus("ignition")],
            Batteries =
            [
                Battery("b1", "high", 1000, 20, 1, PiecewiseLinear.Constant(12.1), PiecewiseLinear.Constant(1e-4)),
                Battery("b2", "low", 1000, 20, 1, PiecewiseLinear.Constant(12.0), PiecewiseLinear.Constant(1e-4)),
            ],
            Feeds = [Path("first", "high"), Path("second", "low")],
            Loads = [Amperes("boxes", "ignition", 10) with { IsOn = false }],
        };

        // The paths are joined only when the boxes are connected, so that both fuses are cold.
        var open = scenario with { Feeds = [.. scenario.Feeds.Select(feed => feed with { Switch = new Switch { IsClosed = false } })] };
        var run = open.Run(Case(At(1, (ActionVerb.Close, "first"), (ActionVerb.Close, "second"), (ActionVerb.Connect, "boxes"))));

        var opened = run.Events.Where(happened => happened.Kind == EventKind.Tripped).ToArray();
        Assert.Equal(["first", "second"], opened.Select(happened => happened.Part));
        Assert.Equal(60 + 2.37, opened[0].Time.Seconds, 0.01);
        Assert.Equal(60 + 2.37 + 0.90, opened[1].Time.Seconds, 0.02);
        Assert.Equal(opened[1].Time, run.Load("boxes").TimePowered);
        Assert.Equal(7.5, run.Feeds[0].HighestCurrent.Amperes, 0.05);
    }

    [Fact]
    public void Contactor_CoilFedFromWhatItFeeds_StaysOutOnceItHasDropped()
    {
        var contactor = new Contactor
        {
            IsClosed = true,
            CoilBus = "main",
            Coil = new ConstantCurrent(Current.FromAmperes(0.8)),
            PullsInAbove = Voltage.FromVolts(9),
            DropsOutBelow = Voltage.FromVolts(6),
        };
        var scenario = Scenario(horizonHours: 0.2) with
        {
            Buses = [Bus("battery_bus"), Bus("main")],
            Batteries = [Battery("battery", "battery_bus", 20, 20, 1.2, PiecewiseLinear.Constant(12.5), PiecewiseLinear.Constant(30))],
            Feeds = [new Feed { Name = "master", From = "battery_bus", To = "main", Contactor = contactor }],
            Loads = [Amperes("radio", "main", 2, 9), Amperes("starter", "main", 250) with { IsOn = false, IsEssential = false }],
        };

        var run = scenario.Run(Case(At(1, (ActionVerb.Connect, "starter")), At(2, (ActionVerb.Shed, "starter"))));

        Assert.Contains(run.Events, happened => happened.Kind == EventKind.Tripped && happened.What.Contains("dropped out", StringComparison.Ordinal));
        Assert.Equal(1, run.Load("radio").TimePowered.Minutes(), 1e-6);
        Assert.Equal(0, run.Bus("main").LowestVoltage.Volts);
        Assert.Equal(0, run.EnergyResidual, 1e-9);
    }

    [Fact]
    public void Charger_TakesFromItsInputWhatItGivesOverItsEfficiency()
    {
        var scenario = Scenario(horizonHours: 0.01) with
        {
            Buses = [Bus("main"), Bus("backup")],
            Batteries = [Battery("ship", "main", 1000, 20, 1, PiecewiseLinear.Constant(12.5), Stiff)],
            Chargers = [ChargerOf("main", "backup", output: 13.8, limit: 5, droop: 20, efficiency: 0.9)],
            Loads = [Ohms("lamp", "backup", 6.9)],
        };

        var run = scenario.Run();

        // (13.8 - v)/0.02 = v/6.9, so v = 13.8 x 6.9/6.92; the input takes v^2/6.9/0.9.
        var volts = 13.8 * 6.9 / 6.92;
        Assert.Equal(volts, run.Bus("backup").StartVoltage.Volts, 1e-6);
        var input = run.Battery("ship").StartCurrent.Amperes * run.Bus("main").StartVoltage.Volts;
        Assert.Equal(volts * volts / 6.9 / 0.9, input, 1e-5);
        Assert.Equal(0, run.EnergyResidual, 1e-9);
    }

    [Fact]
    public void Charger_BelowItsCutOut_StopsAndItsBusDies()
    {
        var scenario = Scenario() with
        {
            Buses = [Bus("main"), Bus("backup")],
            Batteries = [Battery("ship", "main", 10, 20, 1, Table((0, 11), (100, 13)), Stiff)],
            Chargers = [ChargerOf("main", "backup", 13.8, 5, 20, 0.9) with { CutIn = Voltage.FromVolts(12.9), CutOut = Voltage.FromVolts(12) }],
            Loads = [Amperes("radio", "backup", 2, 9)],
        };

        var run = scenario.Run();

        // 2 A at 13.8 - 0.04 = 13.76 V take 13.76 x 2/0.9 = 30.58 W; the main bus falls to 12 V at an EMF of 12.0025 V, when 4.987 Ah have gone out at 12.499 V on average.
        Assert.Contains(run.Events, happened => happened.What.Contains("stops", StringComparison.Ordinal));
        Assert.Equal(4.98725 * 12.4988 / (13.76 * 2 / 0.9) * 60, run.Load("radio").TimePowered.Minutes(), 0.01);
        Assert.Equal(0, run.EnergyResidual, 1e-9);
    }

    [Fact]
    public void SharedGround_DropsOnBothLoads()
    {
        var shared = new ReturnPath { Wire = Wire(10), To = "block" };
        var scenario = Scenario(horizonHours: 0.01) with
        {
            Buses = [Bus("main")],
            Batteries = [Battery("ship", "main", 1000, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(1e-4))],
            Grounds = [new GroundPoint { Name = "block", Resistance = Resistance.FromMilliohms(50) }],
            Loads = [Ohms("lamp", "main", 0.99) with { Return = shared }, Amperes("radio", "main", 10, 10.85) with { Return = shared }],
        };

        var run = scenario.Run();

        // Ground block at 0.05 (10 + i), lamp (12 - vg)/(0.99 + 0.01) = i: vg = 0.05 (10 + 12 - vg) = 22 x 0.05/1.05;
        // the radio has 12 - 1.0476 - 0.1 = 10.852 V.
        Assert.Null(run.Load("radio").TimePowered);
        Assert.Equal(10 + (12 - (1.1 / 1.05)), run.Battery("ship").StartCurrent.Amperes, 1e-4);
        Assert.Equal(0, run.EnergyResidual, 1e-9);
    }

    [Fact]
    public void PowerBehindItsOwnWire_BeyondWhatTheWireCarries_CollapsesAlone()
    {
        var scenario = Scenario(horizonHours: 0.01) with
        {
            Buses = [Bus("main")],
            Batteries = [Battery("ship", "main", 1000, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(0.001))],
            Loads = [Watts("far", "main", 150, 5) with { Wire = Wire(300) }, Watts("near", "main", 150, 9) with { Wire = Wire(10) }],
        };

        var run = scenario.Run();

        Assert.Equal(LossReason.VoltageCollapse, run.Load("far").LostBecause);
        Assert.Null(run.Load("near").TimePowered);
    }

    private static Charger ChargerOf(string from, string to, double output, double limit, double droop, double efficiency) => new()
    {
        Name = "charger",
        From = from,
        To = to,
        Output = Voltage.FromVolts(output),
        Limit = Current.FromAmperes(limit),
        Droop = Resistance.FromMilliohms(droop),
        Efficiency = efficiency,
    };

    private static Scenario Fused(ProtectionKind kind, double tau, double rating, double amperes) => Scenario(horizonHours: 0.2) with
    {
        Buses = [Bus("main"), Bus("far")],
        Batteries = [Battery("battery", "main", 1000, 20, 1, PiecewiseLinear.Constant(12), Stiff)],
        Feeds =
        [
            Feed("feed", "main", "far", 1) with
            {
                Fuse = new Protection { Kind = kind, Rating = Current.FromAmperes(rating), TimeConstant = Duration.FromSeconds(tau) },
            },
        ],
        Loads = [Amperes("load", "far", amperes, 5) with { IsOn = false }],
    };
}
