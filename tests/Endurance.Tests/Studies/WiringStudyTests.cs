using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Library;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.Wiring;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class WiringStudyTests
{
    // 28 V, 50 ft with the return, 20 A (the first example of FAA AC 43.13-1B, page 11-26): computed from table 11-9.
    [Theory]
    [InlineData(10, 20, 1.26, 39.7, WiringVerdict.Fail)]
    [InlineData(8, 20, 0.70, 71.4, WiringVerdict.Pass)]
    [InlineData(8, 70, 0.84, 59.7, WiringVerdict.Pass)]
    public void LoadBranch_FiftyFeetAtTwentyAmperes_NeedsNumberEight(int gauge, double celsius, double volts, double longestFeet, WiringVerdict verdict)
    {
        var load = Amperes("heater", "bus", 20) with { Wire = Wire(gauge, 25, celsius), Return = new ReturnPath { Wire = Wire(gauge, 25, celsius) } };

        var row = Judge(SystemVoltage.Volts28, load).Rows.Single();

        Assert.Equal(volts, row.Drop.Volts, 0.005);
        Assert.Equal(1, row.Limit.Volts);
        Assert.Equal(50, row.Run.Length.Feet, 1e-9);
        Assert.Equal(longestFeet, row.LongestRun!.Value.Feet, 0.05);
        Assert.Equal(new WireGauge(8), row.SmallestGauge);
        Assert.Equal(verdict, row.Verdict);
    }

    // No. 12, 7 ft, 15 A behind 20 A: table 11-9 gives 2.02 ohm per 1000 ft and 19 A at 150 degC, table 11-3 a breaker up to 30 A.
    [Fact]
    public void LoadBranch_WithinEveryTable_PassesWithoutAWord()
    {
        var load = Amperes("radio", "bus", 15) with { Wire = Wire(12, 7, 20), Breaker = Breaker(20) };

        var row = Judge(SystemVoltage.Volts14, load).Rows.Single();

        Assert.Equal(0.2121, row.Drop.Volts, 1e-6);
        Assert.Equal((15, 19, 20), (row.Deciding.Amperes, row.Rating!.Value.Amperes, row.Protection!.Rating.Amperes));
        Assert.Empty(row.Findings);
        Assert.Equal(WiringVerdict.Pass, row.Verdict);
    }

    // Table 11-3 lets No. 22 have 5 A and No. 20 7.5 A; table 11-9 rates them 3 A and 4 A in a bundle at 105 degC.
    [Theory]
    [InlineData(22, 5, "tables-disagree", WiringVerdict.Check)]
    [InlineData(20, 7.5, "tables-disagree", WiringVerdict.Check)]
    [InlineData(22, 3, null, WiringVerdict.Pass)]
    [InlineData(22, 5.1, "current-above-rating", WiringVerdict.Fail)]
    public void ThinWire_BetweenTheTwoTables_SaysThatTheyDisagree(int gauge, double amperes, string? code, WiringVerdict verdict)
    {
        var load = Amperes("lamp", "bus", amperes) with { Wire = Wire(gauge, 1, 20) };

        var row = Judge(SystemVoltage.Volts14, load, new WiringOptions { Insulation = Insulation.Rated105 }).Rows.Single();

        Assert.Equal(code, row.Findings.Select(finding => finding.Code).FirstOrDefault(found => found is not "wire-unprotected"));
        Assert.Equal(verdict, row.Verdict);
    }

    [Theory]
    [InlineData(40, "protection-above-chart", WiringVerdict.Fail)]
    [InlineData(30, null, WiringVerdict.Pass)]
    [InlineData(5, "protection-below-load", WiringVerdict.Check)]
    public void Breaker_AgainstNumberTwelve_IsJudgedByTheChart(double rating, string? code, WiringVerdict verdict)
    {
        var load = Amperes("radio", "bus", 5.5) with { Wire = Wire(12, 4, 20), Breaker = Breaker(rating) };

        var row = Judge(SystemVoltage.Volts14, load).Rows.Single();

        Assert.Equal(code, row.Findings.Select(finding => finding.Code).FirstOrDefault());
        Assert.Equal(verdict, row.Verdict);
    }

    // 0.5 V continuous, 1 V (from memory, unverified) for a short time: 2.02 mohm a foot, 20 ft, 20 A is 0.81 V.
    [Fact]
    public void Starter_ConnectedForSeconds_IsJudgedAsShort()
    {
        var starter = Amperes("starter", "bus", 20) with { Wire = Wire(12, 20, 20), IsOn = false };
        var step = At(1, (ActionVerb.Connect, "starter")) with { Lasts = Duration.FromSeconds(8) };

        var row = WiringStudy.Run(Bench(SystemVoltage.Volts14, starter) with { FailureCases = [Case(step)] }, new WiringOptions()).Rows.Single();

        Assert.True(row.IsShortDeciding);
        Assert.Equal((0, 20), (row.Current.Steady.Amperes, row.Current.Short.Amperes));
        Assert.Equal(1, row.Limit.Volts);
        Assert.Contains(row.Findings, finding => finding.Code is "short-current-above-rating");
        Assert.Equal(WiringVerdict.Check, row.Verdict);
    }

    // Table 11-6: 0.5 V at 14 V where a 28 V system allows 1 V. 2.02 mohm a foot, 5 A, 60 ft: 0.606 V; five times the current of a lamp at 12 V.
    [Fact]
    public void Load_BehindAConverterOfATwentyEightVoltSystem_IsJudgedAtItsOwnVoltage()
    {
        var light = Amperes("reading_light", "low", 5) with { Wire = Wire(12, 60, 20), Switch = new Switch { IsClosed = true } };
        var scenario = Bench(SystemVoltage.Volts28, light);
        scenario = scenario with
        {
            Buses = [.. scenario.Buses, Bus("low")],
            Chargers =
            [
                new Charger
                {
                    Name = "converter", From = "bus", To = "low", Output = Voltage.FromVolts(13.8), Limit = Current.FromAmperes(20),
                    Efficiency = 0.85, Droop = Resistance.FromMilliohms(5),
                },
            ],
        };

        var result = WiringStudy.Run(scenario, new WiringOptions());
        var row = result.Rows.Single();

        Assert.Equal((0.5, 0.606), (row.Limit.Volts, Math.Round(row.Drop.Volts, 3)));
        Assert.Equal(WiringVerdict.Fail, row.Verdict);
        Assert.Equal(25, row.Switch!.Rating.Amperes, 1e-6);
        Assert.Equal(2, result.Assumptions.Count(assumption => assumption.Text.Contains("allowed continuously", StringComparison.Ordinal)));
    }

    [Fact]
    public void Load_NeverConnected_IsTakenAtItsOwnFigure()
    {
        var light = Watts("landing_light", "bus", 42) with { Wire = Wire(18, 10, 20), IsOn = false, Switch = new Switch { IsClosed = true } };

        var row = Judge(SystemVoltage.Volts14, light).Rows.Single();

        Assert.Equal(CurrentSource.Nominal, row.Current.Source);
        Assert.Equal(3, row.Current.Steady.Amperes, 1e-9);
        // Table 11-4: five times the current of a lamp at 12 V; that it is one was told from its name.
        Assert.Equal((LoadType.Lamp, true), (row.Switch!.Type, row.Switch.IsGuess));
        Assert.Equal(15, row.Switch.Rating.Amperes, 1e-9);
    }

    [Fact]
    public void Feed_OverAllCases_TakesTheWorstCurrentWithoutItsSign()
    {
        var scenario = Bench(SystemVoltage.Volts14, Amperes("display", "far", 4), Amperes("heater", "far", 6) with { IsOn = false, Duty = 0.5 });
        var feed = Feed("tie", "far", "bus") with { Wire = Wire(14, 5, 20), Return = new ReturnPath { Wire = Wire(18, 5, 20) } };
        scenario = scenario with { Feeds = [feed], FailureCases = [Case(At(2, (ActionVerb.Connect, "heater")))] };

        var row = WiringStudy.Run(scenario, new WiringOptions()).Rows.Single();

        Assert.Equal((7, 10), (Math.Round(row.Current.Steady.Amperes, 6), Math.Round(row.Current.Short.Amperes, 6)));
        Assert.Equal(new WireGauge(18), row.Run.Thinnest);
        Assert.Equal(9, row.Rating!.Value.Amperes);
    }

    [Fact]
    public void WireGivenAsAResistance_InAFeed_IsNamedAsNotJudged()
    {
        var scenario = Bench(SystemVoltage.Volts14, Amperes("display", "far", 4)) with { Feeds = [Feed("tie", "bus", "far", 5)] };

        var result = WiringStudy.Run(scenario, new WiringOptions());

        Assert.Empty(result.Rows);
        Assert.Equal("tie, display", string.Join(", ", result.WithoutGauge));
    }

    // 11.5 A x 0.0202 ohm is 0.46 V of 0.5 V at 20 degC; T2 = 25 + 125 sqrt(11.5/19) = 122 degC, where copper has 1.40 times the resistance.
    [Fact]
    public void Drop_NearItsLimit_AsksForALookWhenHot()
    {
        var load = Amperes("radio", "bus", 11.5) with { Wire = Wire(12, 20, 20), Breaker = Breaker(15) };

        var row = Judge(SystemVoltage.Volts14, load).Rows.Single();

        Assert.Equal(122.2, row.HotConductor!.Value.Celsius, 0.1);
        Assert.Equal("drop-too-high-when-hot", Assert.Single(row.Findings).Code);
        Assert.Equal(WiringVerdict.Check, row.Verdict);
    }

    // The ratings of FAA AC 43.13-1B, table 11-9, hold at 70 degC around the wire: its note 1.
    [Theory]
    [InlineData(70, false)]
    [InlineData(71, true)]
    public void Ambient_AboveThatOfTheTable_AsksForDerating(double celsius, bool isTold)
    {
        var scenario = Bench(SystemVoltage.Volts14, Amperes("radio", "bus", 2) with { Wire = Wire(12, 7, 20), Breaker = Breaker(5) });

        var row = WiringStudy.Run(scenario with { Ambient = Temperature.FromCelsius(celsius) }, new WiringOptions()).Rows.Single();

        Assert.Equal(isTold, row.Findings.Any(finding => finding.Code is "ambient-above-table"));
    }

    [Fact]
    public void Feed_ThatNeverCarries_IsNotCalledGood()
    {
        var spare = Feed("spare", "bus", "far") with { Wire = Wire(12, 7, 20) };

        var row = WiringStudy.Run(Bench(SystemVoltage.Volts14) with { Feeds = [spare] }, new WiringOptions()).Rows.Single();

        Assert.Contains(row.Findings, finding => finding.Code is "never-carries-current");
        Assert.Equal(WiringVerdict.Check, row.Verdict);
    }

    // Table 11-9 has no row for No. 13; 6.6 mohm a metre of it is from memory, unverified, and decides nothing here.
    [Fact]
    public void Gauge_WithoutARowInTheTable_IsToldAndNotJudgedByAnother()
    {
        var wire = Endurance.Components.Wire.OfGauge(new WireGauge(13), Length.FromFeet(3), 6.6e-3, Temperature.FromCelsius(20));

        var row = Judge(SystemVoltage.Volts14, Amperes("radio", "bus", 2) with { Wire = wire, Breaker = Breaker(5) }).Rows.Single();

        Assert.Null(row.Rating);
        Assert.Contains(row.Findings, finding => finding.Code is "no-rating");
        Assert.Equal(WiringVerdict.Check, row.Verdict);
    }

    private static Wire Wire(int gauge, double feet, double celsius)
    {
        var number = new WireGauge(gauge);
        return Endurance.Components.Wire.OfGauge(number, Length.FromFeet(feet), WireTable.OhmsPerMetreAt20(number)!.Value, Temperature.FromCelsius(celsius));
    }

    private static Protection Breaker(double amperes) => new() { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(amperes) };

    private static WiringResult Judge(SystemVoltage system, Load load, WiringOptions? options = null) =>
        WiringStudy.Run(Bench(system, load), options ?? new WiringOptions());

    private static Scenario Bench(SystemVoltage system, params ImmutableArray<Load> loads) => Scenario(0.5) with
    {
        System = system,
        Buses = [Bus("bus"), Bus("far")],
        Batteries = [Battery("battery", "bus", 100, 20, 1, Table((0, 25), (100, 25)), PiecewiseLinear.Constant(5))],
        Loads = loads,
    };
}
