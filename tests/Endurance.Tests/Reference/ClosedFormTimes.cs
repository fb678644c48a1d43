using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>Discharges whose course over time has a closed form; the derivation stands beside each.</summary>
[Trait("Kind", "Validation")]
public sealed class ClosedFormTimes
{
    private const double Minutes = 1e-4;

    [Theory]
    [InlineData(18, 20, 1.15, 6, 1, 1)]
    [InlineData(18, 20, 1.15, 25, 0.85, 0.6)]
    [InlineData(7.5, 1, 1.22, 12, 1, 1)]
    [InlineData(30, 5, 1, 40, 0.9, 1)]
    [InlineData(9, 20, 1.2, 0.45, 1, 1)] // the 20-hour current itself
    [InlineData(9, 20, 1.2, 0.2, 1, 1)] // below it: 9 Ah / 0.2 A
    public void ConstantCurrent_Battery_IsExhaustedByPeukertsLaw(double capacity, double hours, double k, double amperes, double health, double cold)
    {
        var reference = capacity / hours;
        var expected = amperes >= reference
            ? hours * health * cold * Math.Pow(reference / amperes, k)
            : hours * health * cold * reference / amperes;
        var battery = Battery("battery", "bus", capacity, hours, k, Table((0, 10.5), (20, 11.9), (100, 12.9)), Table((0, 30), (100, 12)));
        var scenario = Scenario(60) with
        {
            Buses = [Bus("bus")],
            Batteries = [battery with { Health = health, CapacityFactor = cold }],
            Loads = [Amperes("load", "bus", amperes, 1)],
        };

        var run = scenario.Run();

        Assert.Equal(expected * 60, run.Battery("battery").TimeToExhaustion.Minutes(), expected * 60 * 1e-6);
        Assert.Equal(expected * amperes, run.Battery("battery").Delivered.AmpereHours, expected * amperes * 1e-6);
        Assert.Equal(LossReason.BusDead, run.Load("load").LostBecause);
        Assert.Equal(expected * 60, run.Load("load").TimePowered.Minutes(), expected * 60 * 1e-6);
    }

    /// <remarks>
    /// A charger takes W = u i / efficiency whatever its input volts, so a battery of EMF e and resistance r gives i = (e - s)/(2r) with
    /// s^2 = e^2 - 4rW, and nothing below e = 2 sqrt(rW). With e = e0 + k z over the charge z the time is C/k times the integral of
    /// 1/i = (e + s)/(2W), which is (e^2 + e s - 4rW ln(e + s))/(4W).
    /// </remarks>
    [Theory]
    [InlineData(1e-5, 2e-3)]
    [InlineData(1e-8, Minutes)]
    public void ChargerInput_OfABatteryThatRunsDown_CollapsesWhereItsPowerEnds(double tolerance, double within)
    {
        const double ohms = 0.6, least = 11, range = 1.8, ampereHours = 18, amperes = 4, volts = 13.8, droop = 0.05, efficiency = 0.9;
        const double watts = (volts - (droop * amperes)) * amperes / efficiency;
        const double end = 4 * ohms * watts;
        static double Integral(double e)
        {
            var s = Math.Sqrt(Math.Max(0, (e * e) - end));
            return ((e * e) + (e * s) - (end * Math.Log(e + s))) / (4 * watts);
        }

        var expected = 60 * ampereHours / range * (Integral(least + range) - Integral(Math.Sqrt(end)));
        var scenario = Scenario() with
        {
            Buses = [Bus("main"), Bus("aux")],
            Batteries = [Battery("battery", "main", ampereHours, 20, 1, Table((0, least), (100, least + range)), PiecewiseLinear.Constant(1000 * ohms))],
            Chargers =
            [
                new Charger
                {
                    Name = "charger", From = "main", To = "aux", Output = Voltage.FromVolts(volts), Limit = Current.FromAmperes(10),
                    Efficiency = efficiency, Droop = Resistance.FromOhms(droop),
                },
            ],
            Loads = [Amperes("box", "aux", amperes)],
        };

        var run = scenario.Run(Case(), new SimulationOptions { Tolerance = tolerance });

        Assert.Equal(57.355, expected, 1e-3);
        Assert.Equal(expected, run.Load("box").TimePowered.Minutes(), within);
        Assert.Equal(LossReason.VoltageCollapse, run.Load("box").LostBecause);
    }

    [Fact]
    public void ConstantCurrent_TwoLevels_AddUpAsFractionsOfLife()
    {
        // 16 Ah at 20 h, k 1.2: 30 A for 10 min, then 5 A. L(I) = 20 (0.8/I)^1.2 h; what is left is (1 - (1/6)/L(30)) L(5) = 47 min.
        static double Life(double amperes) => 20 * Math.Pow(0.8 / amperes, 1.2) * 60;
        var expected = 10 + ((1 - (10 / Life(30))) * Life(5));
        var scenario = Flat(16, 1.2) with { Loads = [Amperes("start", "bus", 25), Amperes("rest", "bus", 5)] };

        var run = scenario.Run(Case(At(10, (ActionVerb.Shed, "start"))));

        Assert.Equal(57, expected, 0.5);
        Assert.Equal(expected, run.Battery("battery").TimeToExhaustion.Minutes(), Minutes);
    }

    [Fact]
    public void LinearEmf_IntoAResistor_DecaysExponentially()
    {
        // k = 1: dz/dt = -I/C, I = E(z)/(R0 + R), E = E0 + (E1 - E0) z: the voltage falls as exp(-t (E1 - E0)/(C (R0 + R))).
        const double e0 = 8, e1 = 13, capacity = 10, series = 0.05, resistor = 2;
        var tau = capacity * (series + resistor) / (e1 - e0);
        var scenario = Scenario() with
        {
            Buses = [Bus("bus", 9)],
            Batteries = [Battery("battery", "bus", capacity, 20, 1, Table((0, e0), (100, e1)), PiecewiseLinear.Constant(series * 1000))],
            Loads = [Ohms("load", "bus", resistor)],
        };

        var run = scenario.Run();

        Assert.Equal(60 * tau * Math.Log(e1 * resistor / (resistor + series) / 9), run.Bus("bus").TimeToCutoff.Minutes(), Minutes);
        Assert.Equal(60 * tau * Math.Log(e1 / e0), run.Battery("battery").TimeToExhaustion.Minutes(), Minutes);
    }

    [Fact]
    public void CapacitorLikeEmf_IntoConstantPower_FallsAsTheSquareRoot()
    {
        // EMF proportional to charge over a vanishing resistance, k = 1: V^2 = V0^2 - 2 P t/C with C = capacity/volts = 10 Ah/12 V.
        const double power = 40, volts = 12, ampereHours = 10, cutoff = 6;
        var hours = ((volts * volts) - (cutoff * cutoff)) * (ampereHours / volts) / (2 * power);
        var scenario = Scenario() with
        {
            Buses = [Bus("bus", cutoff)],
            Batteries = [Battery("battery", "bus", ampereHours, 20, 1, Table((0, 0.0), (100, volts)), PiecewiseLinear.Constant(1e-4))],
            Loads = [Watts("load", "bus", power, 1)],
        };

        Assert.Equal(60 * hours, scenario.Run().Bus("bus").TimeToCutoff.Minutes(), 2e-4);
    }

    [Fact]
    public void FallingEmf_UnderConstantPower_CollapsesWhereItsSquareIsFourRP()
    {
        // E linear in z, k = 1, R constant: collapse at E = sqrt(4 R P). With I = (E - sqrt(E^2 - 4RP))/(2R), t = (C/(E1 - E0)) int dE/I;
        // 1/I = (E + sqrt(E^2 - a^2))/(2P) with a^2 = 4RP, whose integral is E^2/2 + (E sqrt(E^2 - a^2) - a^2 arcosh(E/a))/2.
        const double e0 = 8, e1 = 12.8, capacity = 10, resistance = 0.25, power = 100;
        var a = Math.Sqrt(4 * resistance * power);
        double Integral(double e)
        {
            var root = Math.Sqrt((e * e) - (a * a));
            return ((e * e) + (e * root) - (a * a * Math.Acosh(e / a))) / (4 * power);
        }

        var hours = capacity / (e1 - e0) * (Integral(e1) - Integral(a));
        var scenario = Scenario() with
        {
            Buses = [Bus("bus", 3)],
            Batteries = [Battery("battery", "bus", capacity, 20, 1, Table((0, e0), (100, e1)), PiecewiseLinear.Constant(resistance * 1000))],
            Loads = [Watts("load", "bus", power, 2)],
        };

        var run = scenario.Run();

        Assert.Equal(60 * hours, run.Load("load").TimePowered.Minutes(), 1e-3);
        Assert.Equal(LossReason.VoltageCollapse, run.Load("load").LostBecause);
        Assert.Equal(run.Load("load").TimePowered, run.Bus("bus").TimeToCutoff);
        Assert.Contains(run.Events, item => item.Kind == EventKind.VoltageCollapse && item.What == "voltage collapse on bus");
    }

    [Fact]
    public void TwoBatteries_BehindControllersWithoutDrop_HandOverAtEqualVoltage()
    {
        // The higher one alone feeds 10 A until E1(z) - 10 (R1 + Rw + Ron) = E2(1) : E1 = 11 + 2 z, R 25 mohm in all, E2 full = 12.4.
        // z* = (12.4 + 0.25 - 11)/2 = 0.825, k = 1, 20 Ah: 0.175 x 20 Ah / 10 A = 21 min.
        var controller = new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.Zero };
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus1"), Bus("bus2"), Bus("bus")],
            Batteries =
            [
                Battery("b1", "bus1", 20, 20, 1, Table((0, 11), (100, 13)), PiecewiseLinear.Constant(15)),
                Battery("b2", "bus2", 20, 20, 1, Table((0, 10.4), (100, 12.4)), PiecewiseLinear.Constant(15)),
            ],
            Feeds = [Feed("f1", "bus1", "bus", 6, controller), Feed("f2", "bus2", "bus", 6, controller)],
            Loads = [Amperes("load", "bus", 10, 5)],
        };
        var before = (scenario with { Horizon = Duration.FromMinutes(20.999) }).Run();
        var after = (scenario with { Horizon = Duration.FromMinutes(21.01) }).Run();

        Assert.Equal(0, before.Battery("b2").Delivered.AmpereHours, 1e-9);
        Assert.True(after.Battery("b2").Delivered.AmpereHours > 0);
        Assert.Equal(0, scenario.Run().Feed("f2").LowestCurrent.Amperes, 1e-9);

        // Afterwards the two EMFs, equally steep, move on side by side: with x = E1 - E2 the shares differ by x/R, and dx/dt = -(x/R) (2/20) per hour.
        const double r = 0.025;
        var hours = (60 - 21) / 60.0;
        var decay = Math.Exp(-2 / 20.0 / r * hours);
        var firstAlone = 21 / 60.0 * 10;
        var shared = 10 * hours / 2;
        var difference = 0.25 * (1 - decay) / (2 / 20.0) / 2;
        Assert.Equal(firstAlone + shared + difference, scenario.Run().Battery("b1").Delivered.AmpereHours, 1e-5);
        Assert.Equal(shared - difference, scenario.Run().Battery("b2").Delivered.AmpereHours, 1e-5);
    }

    private static Scenario Flat(double capacity, double k) => Scenario() with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", capacity, 20, k, Table((0, 12), (100, 12)), PiecewiseLinear.Constant(10))],
    };
}
