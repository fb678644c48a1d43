using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>What age and cold do to a battery, and a battery that comes back from empty; EMF 12 V and 10 A unless told otherwise.</summary>
public sealed class BatteryFactorsTests
{
    private static readonly KineticWells Wells = KineticWells.Through(
        (Duration.FromHours(20), Charge.FromAmpereHours(100)), (Duration.FromHours(10), Charge.FromAmpereHours(93)), (Duration.FromHours(1), Charge.FromAmpereHours(60)))!;

    /// <summary>20 mohm and a pair of 30 mohm that has settled, both doubled: 10 A through 100 mohm.</summary>
    [Fact]
    public void ResistanceFactor_OfTwo_DoublesTheOhmsAndThoseOfThePairs()
    {
        var battery = Plain with { ResistanceFactor = 2, Polarisation = [new PolarisationPair(Resistance.FromMilliohms(30), Duration.FromSeconds(2))] };

        var run = (Bench(battery, Amperes("load", "bus", 10)) with { Horizon = Duration.FromMinutes(10) }).Run();

        Assert.Equal(12 - 0.4, run.Bus("bus").StartVoltage.Volts, 1e-9);
        Assert.Equal(12 - 1, run.Bus("bus").LowestVoltage.Volts, 1e-4);
    }

    /// <summary>12 V less 10 A through 20 mohm, 30 mohm that come with 40 s and 15 mohm that come with 200 s.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(150)]
    public void TwoPairs_AfterTheLoadComesOn_LagEachWithItsTime(double seconds)
    {
        var battery = Plain with
        {
            Polarisation =
            [
                new PolarisationPair(Resistance.FromMilliohms(30), Duration.FromSeconds(40)), new PolarisationPair(Resistance.FromMilliohms(15), Duration.FromSeconds(200)),
            ],
        };

        var run = (Bench(battery, Amperes("load", "bus", 10)) with { Horizon = Duration.FromSeconds(seconds) }).Run();

        var ohms = 0.020 + (0.030 * (1 - Math.Exp(-seconds / 40))) + (0.015 * (1 - Math.Exp(-seconds / 200)));
        Assert.Equal(12 - (10 * ohms), run.Bus("bus").LowestVoltage.Volts, 1e-5);
    }

    /// <summary>A resistance that falls from 100 mohm to 1 mohm as it fills is 1 mohm in a full battery.</summary>
    [Fact]
    public void Resistance_FallingAHundredfold_IsTheLeastAtFullCharge() =>
        Assert.Equal(12 - 0.01, Bench(Plain with { Resistance = Table((0, 0.1), (100, 0.001)) }, Amperes("load", "bus", 10)).Run().Bus("bus").StartVoltage.Volts, 1e-9);

    /// <summary>Health 0.8 and half of the capacity in the cold leave 0.4 of both wells: 24 A empty them as 60 A empty new and warm ones, which is in an hour.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0.7)] // of charge, and nothing of a discharge
    public void Kinetic_AgedAndCold_LastsAsWellsOfItsShare(double efficiency)
    {
        var run = Bench(Kinetic with { Health = 0.8, CapacityFactor = 0.5, ChargeEfficiency = efficiency }, Amperes("load", "bus", 24)).Run();

        Assert.Equal(60, run.Battery("battery").TimeToExhaustion.Minutes(), 1e-3);
    }

    /// <summary>20 A for an hour at an efficiency of 0.8 are 16 Ah of the wells' own capacity.</summary>
    [Fact]
    public void Kinetic_Charged_KeepsWhatItsEfficiencyLeaves()
    {
        var scenario = Bench(Kinetic with { InitialCharge = 0.5, ChargeEfficiency = 0.8 }) with { Alternators = [Alternator("alternator", "bus", 16, 1, 20)], Horizon = Duration.FromHours(1) };

        var run = scenario.Run();

        Assert.Equal(20, run.Battery("battery").Received.AmpereHours, 1e-6);
        Assert.Equal(0.5 + (16 / Wells.Capacity.AmpereHours), run.Battery("battery").ChargeEnd, 1e-6);
    }

    /// <summary>
    /// A full available well passes on what the bound one takes: its level rises by dh2/dt = k c (1 - h2), and what is missing is (1 - c)(1 - h2).
    /// 16 V against 12 V behind 10 mohm in all fill the available well within minutes.
    /// </summary>
    [Fact]
    public void Kinetic_WithItsAvailableWellFull_FillsTheBoundOneExponentially()
    {
        double Missing(double hours) => 1 - (Bench(Kinetic with { InitialCharge = 0.5 }) with
        {
            Alternators = [Alternator("alternator", "bus", 16, 10, 4000)],
            Horizon = Duration.FromHours(hours),
        }).Run().Battery("battery").ChargeEnd;

        Assert.Equal(Math.Exp(-Wells.RatePerHour * Wells.Available), Missing(2) / Missing(1), 1e-5);
        Assert.InRange(Missing(1), 0.01, 1);
    }

    /// <summary>At rest from 1 h to 2 h the full available well gives to the bound one; under the alternator again it fills as before.</summary>
    [Fact]
    public void Kinetic_AfterARestOnceFull_FillsAgain()
    {
        double Missing(double hours) => 1 - (Bench(Kinetic with { InitialCharge = 0.5 }) with
        {
            Alternators = [Alternator("alternator", "bus", 16, 10, 4000)],
            Horizon = Duration.FromHours(hours),
        }).Run(Case(At(60, (ActionVerb.Shed, "alternator")), At(120, (ActionVerb.Connect, "alternator")))).Battery("battery").ChargeEnd;

        Assert.Equal(Math.Exp(-Wells.RatePerHour * Wells.Available), Missing(4) / Missing(3), 1e-4);
        Assert.Equal(Missing(1), Missing(2), 1e-6);
    }

    /// <summary>
    /// 100 A have emptied the available well; at rest the other refills it, h1 = (1 - c) h2 (1 - exp(-kt)) with h2 as it was then.
    /// It counts as able again at 0.05.
    /// </summary>
    [Fact]
    public void Kinetic_LeftAloneOnceExhausted_CanSupplyAgainWhenItsAvailableWellHasATwentieth()
    {
        var run = Bench(Kinetic, Amperes("load", "bus", 100, 5)).Run();

        var exhausted = run.Battery("battery").TimeToExhaustion!.Value.Hours;
        var bound = (1 - (100 * exhausted / Wells.Capacity.AmpereHours)) / (1 - Wells.Available);
        var hours = -Math.Log(1 - (0.05 / ((1 - Wells.Available) * bound))) / Wells.RatePerHour;
        Assert.Equal((exhausted + hours) * 60, Assert.Single(run.Events, happened => happened.Kind == EventKind.BatteryRevived).Time.Minutes, 1e-3);
    }

    /// <summary>10 Ah, empty, charged by 10 A: a thousandth of its charge is back after 3.6 s.</summary>
    [Fact]
    public void Exhausted_ChargedAgain_CanSupplyOnceItHasAThousandth()
    {
        var scenario = Bench(Plain with { InitialCharge = 0 }) with { Alternators = [Alternator("alternator", "bus", 14, 1, 10)] };

        var run = scenario.Run();

        Assert.Equal(Duration.Zero, run.Battery("battery").TimeToExhaustion);
        Assert.Equal(3.6, Assert.Single(run.Events, happened => happened.Kind == EventKind.BatteryRevived).Time.Seconds, 1e-3);
    }

    [Fact]
    public void Protection_OpeningOverCurrent_IsToldAtItsMinute()
    {
        var battery = Plain with { Protection = new BatteryProtection { OpensAbove = Current.FromAmperes(15) } };

        var run = Bench(battery, Amperes("load", "bus", 10), Amperes("starter", "bus", 8) with { IsOn = false }).Run(Case(At(6, (ActionVerb.Connect, "starter"))));

        var opened = Assert.Single(run.Events, happened => happened.Kind == EventKind.BatteryProtection);
        Assert.Equal(("battery opened by its own protection", 6.0), (opened.What, Math.Round(opened.Time.Minutes, 6)));
    }

    private static Battery Plain => Battery("battery", "bus", 10, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(20));

    private static Battery Kinetic => Battery("battery", "bus", 100, 20, 1.2, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(0.01)) with
    {
        CapacityModel = CapacityModel.Kinetic,
        TypedWells = Wells,
    };

    private static Scenario Bench(Battery battery, params Load[] loads) => Scenario(horizonHours: 3) with
    {
        Buses = [Bus("bus")],
        Batteries = [battery],
        Loads = [.. loads],
    };
}
