using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>Operating points whose solution has a closed form; the derivation stands beside each.</summary>
[Trait("Kind", "Validation")]
public sealed class ClosedFormNetworks
{
    private const double Volts = 1e-8;

    [Fact]
    public void Divider_WireIntoResistor_DividesTheVoltage()
    {
        var run = Start(Source(12, 20) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Feeds = [Feed("wire", "bus", "far", 180)],
            Loads = [Ohms("load", "far", 1)],
        });

        Assert.Equal(12 * 1.18 / 1.2, run.Bus("bus").StartVoltage.Volts, Volts);
        Assert.Equal(12 / 1.2, run.Bus("far").StartVoltage.Volts, Volts);
        Assert.Equal(10, run.Feed("wire").StartCurrent.Amperes, Volts);
    }

    [Theory]
    [InlineData(100, 200, 300, 600)] // balanced: nothing through the bridge
    [InlineData(100, 200, 300, 400)]
    [InlineData(250, 100, 70, 90)]
    public void Wheatstone_Bridge_SharesAsItsDeterminantSays(double r1, double r2, double r3, double r4)
    {
        // Milliohms. r1, r3 from the source to left and right, r2, r4 from there to a sink bus; the bridge of 50 mohm between left and right.
        const double bridge = 50;
        var run = Start(Source(12, 10) with
        {
            Buses = [Bus("bus"), Bus("left"), Bus("right"), Bus("sink")],
            Feeds =
            [
                Feed("f1", "bus", "left", r1), Feed("f2", "left", "sink", r2), Feed("f3", "bus", "right", r3), Feed("f4", "right", "sink", r4),
                Feed("bridge", "left", "right", bridge),
            ],
            Loads = [Amperes("load", "sink", 10, 1)],
        });

        // A current I into a bridge: I_g = I (r2 r3 - r1 r4) / (g (r1 + r2 + r3 + r4) + (r1 + r3)(r2 + r4)), positive from left to right.
        var expected = 10 * ((r2 * r3) - (r1 * r4)) / ((bridge * (r1 + r2 + r3 + r4)) + ((r1 + r3) * (r2 + r4)));
        Assert.Equal(expected, run.Feed("bridge").StartCurrent.Amperes, 1e-7);
    }

    [Fact]
    public void Ladder_OfTwoNodes_MatchesItsContinuedFraction()
    {
        var run = Start(Source(12, 100) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Feeds = [Feed("wire", "bus", "far", 500)],
            Loads = [Ohms("near_load", "bus", 2), Ohms("far_load", "far", 1.5)],
        });

        // 0.1 + 2 || (0.5 + 1.5) = 0.1 + 1
        Assert.Equal(12 / 1.1, run.Bus("bus").StartVoltage.Volts, Volts);
        Assert.Equal(12 / 1.1 * 0.75, run.Bus("far").StartVoltage.Volts, Volts);
    }

    [Theory]
    [InlineData(12, 50, 80)]
    [InlineData(11, 120, 150)] // settles at 9.0 V and 16.7 A
    [InlineData(12.8, 10, 28)]
    [InlineData(26, 40, 3000)]
    public void ConstantPower_OnOneSource_TakesTheHigherRoot(double emf, double milliohms, double watts)
    {
        var run = Start(Source(emf, milliohms) with { Loads = [Watts("load", "bus", watts, 1)] });

        var expected = (emf + Math.Sqrt((emf * emf) - (4 * milliohms * 1e-3 * watts))) / 2;
        Assert.Equal(expected, run.Bus("bus").StartVoltage.Volts, Volts);
        Assert.Equal(watts / expected, run.Battery("battery").StartCurrent.Amperes, 1e-6);
        Assert.Null(run.Load("load").LostBecause);
    }

    [Theory]
    [InlineData(12, 50)]
    [InlineData(11, 210)] // 144 W at most
    [InlineData(27, 17)]
    public void ConstantPower_AtItsLimit_CollapsesJustAboveAndNotJustBelow(double emf, double milliohms)
    {
        // The most that a source E behind R can give is E^2/(4R).
        var most = emf * emf / (4 * milliohms * 1e-3);

        var below = Start(Source(emf, milliohms) with { Loads = [Watts("load", "bus", most * (1 - 1e-6), 1)] });
        var above = Start(Source(emf, milliohms) with { Loads = [Watts("load", "bus", most * (1 + 1e-6), 1)] });

        Assert.Null(below.Load("load").TimePowered);
        Assert.Equal(emf / 2 * (1 + 1e-3), below.Bus("bus").StartVoltage.Volts, 1e-5 * emf);
        Assert.Equal(0, above.Load("load").TimePowered.Minutes());
        Assert.Equal(LossReason.VoltageCollapse, above.Load("load").LostBecause);
        Assert.Equal(emf, above.Bus("bus").StartVoltage.Volts, Volts);
    }

    [Theory]
    [InlineData(12, 2, 20e-6, 1.05, 6)]
    [InlineData(12, 100, 17.1e-9, 1.7, 3.5)]
    [InlineData(1.2, 0.1, 65e-6, 1.33, 12)]
    public void Diode_WithResistor_MatchesLambertW(double emf, double ohms, double saturation, double ideality, double milliohms)
    {
        // I = (a/R) W(x) - Is with x = (Is R/a) exp((E + Is R)/a), R the sum of all resistances and a = n k T/q.
        const double kelvin = 300.15, source = 0.02;
        var a = ideality * 1.380649e-23 / 1.602176634e-19 * kelvin;
        var r = ohms + source + (milliohms * 1e-3);
        var expected = (a / r * LambertW(Math.Log(saturation * r / a) + ((emf + (saturation * r)) / a))) - saturation;
        var run = Start(Source(emf, source * 1000) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Feeds = [Feed("diode", "bus", "far", diode: Schottky(saturation * 1e6, ideality, milliohms))],
            Loads = [Ohms("load", "far", ohms)],
        });

        Assert.Equal(expected, run.Feed("diode").StartCurrent.Amperes, 1e-8);
    }

    [Fact]
    public void Diode_Reversed_PassesItsSaturationCurrentAndItsLeakage()
    {
        var diode = Schottky(20, 1.05, 6);
        var run = Start(Backward(diode));
        var leaky = Start(Backward(diode with { Leakage = Conductance.FromSiemens(1e-3) }));

        Assert.Equal(-20e-6, run.Feed("diode").StartCurrent.Amperes, 1e-9);
        // Two volts across it and its 6 mohm beside the saturation current.
        Assert.Equal(-20e-6 - (2 / 1000.006), leaky.Feed("diode").StartCurrent.Amperes, 1e-7);
    }

    [Fact]
    public void Diode_Shorted_ConductsBothWaysByItsShortResistance()
    {
        var scenario = Backward(Schottky(20, 1.05, 6) with { ShortResistance = Resistance.FromMilliohms(2) });

        var run = Start(scenario, Case(At(0, (ActionVerb.Short, "diode"))));

        // 12 V and 14 V behind 10 mohm each, 2 mohm between, no other resistance.
        Assert.Equal(-2 / 0.022, run.Feed("diode").StartCurrent.Amperes, 1e-6);
        Assert.True(run.Feed("diode").ReverseCharge.Coulombs > 0);
    }

    [Theory]
    [InlineData(4, 20, 10)] // 10 A through 4 mohm is 40 mV, above the regulated 20 mV
    [InlineData(4, 0, 10)]
    [InlineData(4, 20, 2)] // 8 mV by resistance alone: regulated
    [InlineData(4, 20, 0.001)]
    public void IdealDiodeController_WithConductors_DropsByItsLaw(double on, double regulated, double amperes)
    {
        const double conductors = 6;
        var controller = new IdealDiodeController { OnResistance = Resistance.FromMilliohms(on), RegulatedDrop = Voltage.FromVolts(regulated * 1e-3) };
        var run = Start(Source(12, 20) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Feeds = [Feed("diode", "bus", "far", conductors, controller)],
            Loads = [Amperes("load", "far", amperes, 1)],
        });

        // Own drop in mV: I Ron where that is above the regulated drop, else 0.95 of it plus I Ron/20.
        var own = amperes * on >= regulated ? amperes * on : (0.95 * regulated) + (amperes * on / 20);
        var drop = (run.Bus("bus").StartVoltage - run.Bus("far").StartVoltage).Volts * 1000;
        Assert.Equal(own + (conductors * amperes), drop, 1e-6);
        Assert.Equal(own * 1e-3 * amperes, run.Feed("diode").HighestDiodePower!.Value.Watts, 1e-8);
    }

    [Fact]
    public void IdealDiodeController_Reversed_BlocksCompletely()
    {
        var run = Start(Backward(new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.Zero }));

        Assert.Equal(0, run.Feed("diode").StartCurrent.Amperes);
    }

    [Theory]
    [InlineData(20, 14.0)] // 14.2 V less 20 A through 10 mohm
    [InlineData(0, 14.2)]
    public void Alternator_BelowItsLimit_FallsByItsDroop(double amperes, double volts)
    {
        var scenario = Scenario(1) with { Buses = [Bus("bus")], Alternators = [Alternator("alternator", "bus", 14.2, 10, 40)] };
        var run = Start(amperes > 0 ? scenario with { Loads = [Amperes("load", "bus", amperes, 1)] } : scenario);

        Assert.Equal(volts, run.Bus("bus").StartVoltage.Volts, Volts);
    }

    [Fact]
    public void Alternator_BeyondItsLimit_LeavesTheRestToTheBattery()
    {
        var run = Start(Source(12.5, 20) with
        {
            Alternators = [Alternator("alternator", "bus", 14.2, 10, 40)],
            Loads = [Amperes("load", "bus", 55, 1)],
        });

        Assert.Equal(15, run.Battery("battery").StartCurrent.Amperes, 1e-7);
        Assert.Equal(12.5 - 0.3, run.Bus("bus").StartVoltage.Volts, Volts);
    }

    [Fact]
    public void Alternator_BelowTheBattery_TakesNothing()
    {
        var run = Start(Source(15, 20) with { Alternators = [Alternator("alternator", "bus", 14.2, 10, 40)], Loads = [Amperes("load", "bus", 10, 1)] });

        Assert.Equal(10, run.Battery("battery").StartCurrent.Amperes, 1e-7);
    }

    [Fact]
    public void HeatPath_DiodeUnderLoad_SettlesWhereHeatAndDropAgree()
    {
        const double amperes = 8, kelvinPerWatt = 12, ambient = 298.15;
        var diode = Schottky(20, 1.05, 6) with { HeatPath = kelvinPerWatt };
        // Independent fixed point by bisection of T = ambient + K/W x I V(I, T).
        double low = ambient, high = 500;
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            var a = 1.05 * 8.617333262e-5 * middle;
            var saturation = 20e-6 * Math.Pow(middle / 300.15, 2 / 1.05) * Math.Exp(0.69 / (1.05 * 8.617333262e-5) * ((1 / 300.15) - (1 / middle)));
            var watts = amperes * ((a * Math.Log((amperes / saturation) + 1)) + (amperes * 0.006));
            (low, high) = ambient + (kelvinPerWatt * watts) > middle ? (middle, high) : (low, middle);
        }

        var run = Start(Source(12, 20) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Feeds = [Feed("diode", "bus", "far", diode: diode)],
            Loads = [Amperes("load", "far", amperes, 1)],
        });

        Assert.Equal(low, run.Feed("diode").HighestJunction!.Value.Kelvin, 0.01);
        Assert.Equal((low - ambient) / kelvinPerWatt, run.Feed("diode").HighestDiodePower!.Value.Watts, 1e-3);
    }

    private static Scenario Source(double emf, double milliohms) => Scenario(1) with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", 1000, 20, 1, Table((0, emf), (100, emf)), PiecewiseLinear.Constant(milliohms))],
    };

    private static Scenario Backward(Diode diode) => Source(12, 10) with
    {
        Buses = [Bus("bus"), Bus("far")],
        Batteries =
        [
            Battery("battery", "bus", 1000, 20, 1, Table((0, 12), (100, 12)), PiecewiseLinear.Constant(10)),
            Battery("higher", "far", 1000, 20, 1, Table((0, 14), (100, 14)), PiecewiseLinear.Constant(10)),
        ],
        Feeds = [Feed("diode", "bus", "far", diode: diode)],
    };

    /// <summary>Ends the run at once: what is looked at is the start.</summary>
    private static SimulationResult Start(Scenario scenario, FailureCase? failureCase = null) =>
        (scenario with { Horizon = Duration.FromSeconds(0.01) }).Run(failureCase);

    /// <summary>W(e^y) by Newton's method on w + ln w = y.</summary>
    private static double LambertW(double y)
    {
        var w = y > 1 ? y - Math.Log(y) : Math.Exp(y) / 2;
        for (var i = 0; i < 100; i++)
            w -= (w + Math.Log(w) - y) * w / (w + 1);
        return w;
    }
}
