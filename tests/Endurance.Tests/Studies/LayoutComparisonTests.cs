using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Studies.LayoutComparison;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class LayoutComparisonTests
{
    private const double Tolerance = 1e-8;

    /// <summary>12 V behind 10 mohm, and 10 mohm or 110 mohm of wire to 2 A: 11.96 V and 11.76 V, by hand, until the battery is exhausted.</summary>
    [Fact]
    public void Layouts_OfOneWire_DifferByItsDropAtBothEnds()
    {
        var results = LayoutComparisonStudy.Run([new("short", Wired(10)), new("long", Wired(110))], Tolerance);

        Assert.Equal(["short", "long"], results.Select(result => result.Name));
        Assert.Equal(11.96, results[0].Cases[0].StartVoltage!.Value.Volts, 1e-6);
        Assert.Equal(11.96, results[0].Cases[0].EndVoltage!.Value.Volts, 1e-6);
        Assert.Equal(11.76, results[1].Cases[0].StartVoltage!.Value.Volts, 1e-6);
        Assert.Equal(results[0].Cases[0].Result.Endurance.Minutes(), results[1].Cases[0].Result.Endurance.Minutes(), 1e-6);
    }

    /// <summary>The EMF falls in a straight line from 13 V full to 11 V empty, so that the volts one minute before the end follow by hand.</summary>
    [Fact]
    public void EndVoltage_OfAFallingBattery_IsThatOfOneMinuteBeforeTheLoss()
    {
        var scenario = Wired(10, PiecewiseLinear.FromPoints((0, 11), (1, 13)));

        var one = LayoutComparisonStudy.Run([new("a", scenario)], Tolerance)[0].Cases[0];

        var minutes = one.Result.Endurance.Minutes();
        Assert.Equal(11 + (2 / minutes) - 0.04, one.EndVoltage!.Value.Volts, 1e-6);
    }

    /// <summary>Watts of a diode are its own drop times the current; without a heat path its temperature is not known.</summary>
    [Fact]
    public void Diode_OfAFeed_TellsItsWattsAndItsJunctionOnlyWithAHeatPath()
    {
        var diode = Schottky(20, 1.05, 6);
        var results = LayoutComparisonStudy.Run(
            [new("wire", Wired(10)), new("diode", Wired(10, diode: diode)), new("cooled", Wired(10, diode: diode with { HeatPath = 10 }))], Tolerance);

        Assert.Null(results[0].Cases[0].HighestDiodePower);
        var drop = 11.96 - results[1].Cases[0].StartVoltage!.Value.Volts;
        Assert.Equal(2 * drop, results[1].Cases[0].HighestDiodePower!.Value.Watts, 1e-6);
        Assert.Null(results[1].Cases[0].HighestJunction);
        Assert.Equal(25 + (10 * results[2].Cases[0].HighestDiodePower!.Value.Watts), results[2].Cases[0].HighestJunction!.Value.Celsius, 1e-3);
    }

    [Fact]
    public void Parts_OfALayout_AreSourcesAndWhatStandsInFeedsAndLoads()
    {
        var plain = Wired(10);
        var rich = plain with
        {
            Feeds = [plain.Feeds[0] with { Diode = Schottky(20, 1.05, 6), Switch = new Switch { IsClosed = true }, Shunt = Resistance.FromMilliohms(1) }],
            Loads = [plain.Loads[0] with { Switch = new Switch { IsClosed = true } }],
        };

        var results = LayoutComparisonStudy.Run([new("plain", plain), new("rich", rich)], Tolerance);

        Assert.Equal([1, 5], results.Select(result => result.Parts));
    }

    /// <summary>With the battery or the only wire gone nothing is left, and an open battery is the only failure of any part: none is survived.</summary>
    [Fact]
    public void Failures_OfASecondBattery_AreSurvived()
    {
        var one = Wired(10) with { Requirements = [new Requirement { Loads = ["load"], Endure = Duration.FromMinutes(30) }] };
        var two = one with { Batteries = [.. one.Batteries, Battery("second", "essential", 10, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(10))] };

        var results = LayoutComparisonStudy.Run([new("one", one), new("two", two)], Tolerance);

        Assert.All(results, result => Assert.Equal(Verdict.Pass, result.Verdict));
        Assert.True(
            (double)results[1].FailuresSurvived / results[1].FailuresTried > (double)results[0].FailuresSurvived / results[0].FailuresTried,
            $"{results[0].FailuresSurvived} of {results[0].FailuresTried}, {results[1].FailuresSurvived} of {results[1].FailuresTried}");
    }

    [Fact]
    public void Basis_OfAircraftThatAreAskedDifferentThings_TellsInWhich()
    {
        var plain = Wired(10);
        var asked = plain with { Requirements = [new Requirement { Loads = ["load"], Endure = Duration.FromMinutes(30) }] };

        Assert.Equal("", Said(asked, asked with { Feeds = [Feed("tie", "battery", "essential", 500)], Requirements = [asked.Requirements[0] with { Loads = ["load"] }] }));
        Assert.Equal("other requirements", Said(asked, plain));
        Assert.Equal("other requirements", Said(asked, asked with { Requirements = [asked.Requirements[0] with { Endure = Duration.FromMinutes(31) }] }));
        Assert.Equal("other loads", Said(plain, plain with { Loads = [plain.Loads[0] with { Duty = 0.5 }] }));
        Assert.Equal(
            "another system voltage, another ambient temperature, another horizon, other failure cases",
            Said(plain, plain with { System = SystemVoltage.Volts28, Ambient = Temperature.FromCelsius(0), Horizon = Duration.FromHours(1), FailureCases = [] }));

        static string Said(Scenario one, Scenario other) => string.Join(", ", LayoutBasis.Differences(one, other));
    }

    private static Scenario Wired(double milliohms, PiecewiseLinear? emf = null, Diode? diode = null) => Scenario(10) with
    {
        Buses = [Bus("battery"), Bus("essential")],
        Batteries = [Battery("ship", "battery", 10, 20, 1, emf ?? PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(10))],
        Feeds = [Feed("tie", "battery", "essential", milliohms, diode)],
        Loads = [Amperes("load", "essential", 2)],
        FailureCases = [Case()],
    };
}
