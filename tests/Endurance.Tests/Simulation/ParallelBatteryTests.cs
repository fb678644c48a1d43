using Endurance.Components;
using Endurance.Findings;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

public sealed class ParallelBatteryTests
{
    /// <summary>13 V and 12.5 V behind 20 mohm each, no load: 0.5 V over 40 mohm is 12.5 A.</summary>
    [Fact]
    public void BatteriesOfDifferentCharge_CirculateACurrentThatIsReported()
    {
        var judged = Bench().Judge();

        var finding = Assert.Single(judged.Findings, finding => finding.Code == "circulating-current");
        Assert.Equal("weak", finding.Part);
        Assert.Equal("12.50 A", finding.Value);
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(-12.5, judged.Run.Battery("weak").LowestCurrent.Amperes, 1e-6);
    }

    [Fact]
    public void ChargeFromAnAlternator_IsNotCirculation()
    {
        var scenario = Bench() with { Alternators = [Alternator("alternator", "bus", 14.5, 10, 100)] };

        Assert.DoesNotContain(scenario.Judge().Findings, finding => finding.Code == "circulating-current");
    }

    [Fact]
    public void ChargerBetweenTwoBatteries_IsNotCirculation()
    {
        var apart = Apart();

        var judged = apart.Judge();

        Assert.Equal(-2, judged.Run.Battery("weak").LowestCurrent.Amperes, 1e-6);
        Assert.DoesNotContain(judged.Findings, finding => finding.Code == "circulating-current");
    }

    /// <summary>The 2 A of the charger do not hide the tie: 0.5 V, and 2 A through 20 mohm on top, over 41 mohm.</summary>
    [Fact]
    public void BatteriesTiedBesideACharger_CirculateWhatTheChargerDoesNotGive()
    {
        var tied = Apart() with { Feeds = [Feed("tie", "bus", "other", 1)] };

        var finding = Assert.Single(tied.Judge().Findings, finding => finding.Code == "circulating-current");

        Assert.Equal("weak", finding.Part);
        Assert.InRange(double.Parse(finding.Value[..^2], System.Globalization.CultureInfo.InvariantCulture), 9, 12.5);
    }

    [Fact]
    public void CurrentThatChangesByMoreThanTwoToOne_GivesBothModels()
    {
        var scenario = Scenario() with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 16, 20, 1.2, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(1))],
            Loads = [Amperes("high", "bus", 25), Amperes("low", "bus", 5)],
        };
        var steps = Case(At(10, (ActionVerb.Shed, "high")));
        CaseResult Judge(CapacityModel model) => (scenario with { Batteries = [scenario.Batteries[0] with { CapacityModel = model }] }).Judge(steps);

        var peukert = Judge(CapacityModel.Peukert);
        var kinetic = Judge(CapacityModel.Kinetic);

        Assert.Equal(peukert.Endurance.Minutes(), peukert.Peukert!.Endurance.Minutes(), 1e-9);
        Assert.Equal(kinetic.Endurance.Minutes(), kinetic.Kinetic!.Endurance.Minutes(), 1e-9);
        Assert.Equal(peukert.Kinetic!.Endurance.Minutes(), kinetic.Endurance.Minutes(), 1e-6);
        Assert.Equal(57, peukert.Endurance.Minutes(), 0.5);
        Assert.Equal(74, kinetic.Endurance.Minutes(), 0.5);
    }

    private static Scenario Apart()
    {
        var bench = Bench();
        return bench with
        {
            Buses = [Bus("bus"), Bus("other")],
            Batteries = [bench.Batteries[0], bench.Batteries[1] with { Bus = "other" }],
            Chargers = [new Charger { Name = "charger", From = "bus", To = "other", Output = Voltage.FromVolts(13.8), Limit = Current.FromAmperes(2), Efficiency = 0.9, Droop = Resistance.FromMilliohms(50) }],
        };
    }

    private static Scenario Bench() => Scenario(horizonHours: 0.1) with
    {
        Buses = [Bus("bus")],
        Batteries =
        [
            Battery("strong", "bus", 20, 20, 1, Table((0, 11), (100, 13)), PiecewiseLinear.Constant(20)),
            Battery("weak", "bus", 20, 20, 1, Table((0, 11), (100, 13)), PiecewiseLinear.Constant(20)) with { InitialCharge = 0.75 },
        ],
    };
}
