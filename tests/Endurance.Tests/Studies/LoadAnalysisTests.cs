using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.LoadAnalysis;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class LoadAnalysisTests
{
    // 26.15 A on 35 A is 74.7 %; pitot heat adds 6.5 A: 93 %. Limit 80 %: FAA AC 43.13-1B, paragraph 11-35, page 11-12.
    [Theory]
    [InlineData(false, 0.747, true)]
    [InlineData(true, 0.933, false)]
    public void Alternator_WithPitotHeat_IsAboveFourFifths(bool hasPitotHeat, double share, bool isWithin)
    {
        var result = LoadAnalysisStudy.Run(Panel(Amperes("pitot_heat", "bus", 6.5) with { IsOn = hasPitotHeat }));

        var alternator = Assert.Single(result.Shares);
        Assert.Equal(share, alternator.Fraction, 5e-4);
        Assert.Equal(isWithin, alternator.IsWithin);
        Assert.Equal(!isWithin, result.Findings.Any(finding => finding.Code is "alternator-share"));
    }

    [Fact]
    public void Strobe_WithAStatedPeak_CountsItsMeanAndShowsItsPeak()
    {
        var result = LoadAnalysisStudy.Run(Panel());

        var strobe = result.Items.Single(item => item.Name is "strobe");
        var all = result.Totals.Single(total => total.Bus is null);
        Assert.Equal((2.30, 7.10), (strobe.Mean.Amperes, strobe.Peak.Amperes));
        Assert.Equal((26.15, 30.95), (Math.Round(all.Mean.Amperes, 9), Math.Round(all.Peak.Amperes, 9)));
    }

    [Fact]
    public void Load_WithADuty_IsIntermittentAndCountsByIt()
    {
        var result = LoadAnalysisStudy.Run(Panel(Amperes("transmitter", "bus", 6) with { Duty = 0.1 }));

        var bus = result.Totals.Single(total => total.Bus is "bus");
        Assert.Equal((26.15, 0.6, 26.75), (Math.Round(bus.Continuous.Amperes, 9), Math.Round(bus.Intermittent.Amperes, 9), Math.Round(bus.Mean.Amperes, 9)));
    }

    [Fact]
    public void Load_OfAPhase_CountsInItAloneWhetherDrawnOnOrOff()
    {
        var result = LoadAnalysisStudy.Run(Panel(Amperes("flaps", "bus", 5) with { Phase = "landing", IsOn = false }, Amperes("light", "bus", 3) with { IsOn = false }));

        Assert.Equal([(null, 26.15), ("landing", 31.15)], result.Shares.Select(share => (share.Phase, Math.Round(share.Load.Mean.Amperes, 9))).ToArray());
    }

    [Fact]
    public void CoilAndField_OfWhatIsOn_AreLoadsToo()
    {
        var scenario = Panel() with
        {
            Feeds = [Feed("master", "bus", "far", 1) with { Contactor = new Contactor { IsClosed = true, Coil = new ConstantCurrent(Current.FromAmperes(0.8)) } }],
        };
        scenario = scenario with { Alternators = [scenario.Alternators[0] with { Field = new AlternatorField { Bus = "far", Current = Current.FromAmperes(3) } }] };

        var result = LoadAnalysisStudy.Run(scenario);

        Assert.Equal(["master coil", "generator field"], result.Items.Where(item => item.Kind is not LoadItemKind.Load).Select(item => item.Name).ToArray());
        Assert.Equal(29.95, result.Shares.Single().Load.Mean.Amperes, 1e-9);
    }

    [Theory]
    [InlineData(null, 2)]
    [InlineData(5.0, 1)]
    public void Alternators_OnJoinedBuses_ShareTheirLoad(double? tieMilliohms, int groups)
    {
        var scenario = Panel(Amperes("far_heater", "far", 10));
        scenario = scenario with { Alternators = [scenario.Alternators[0], Alternator("second", "far", 14, 5, 20)] };
        if (tieMilliohms is { } milliohms)
            scenario = scenario with { Feeds = [Feed("tie", "bus", "far", milliohms)] };

        var shares = LoadAnalysisStudy.Run(scenario).Shares;

        Assert.Equal(groups, shares.Length);
        Assert.Equal(55, shares.Sum(share => share.Rated.Amperes));
        Assert.Equal(36.15, shares.Sum(share => share.Load.Mean.Amperes), 1e-9);
    }

    // 30 Ah derated to 75 %: 1350 - 190 - 420 = 740 A min, /29 = 25.5, in all 40.5 min. Peukert's law, k 1.15, computed from the same
    // inputs with 75 % of the time at every current: 39.7 min as a 1-hour rating, 22.7 as a 20-hour rating.
    [Theory]
    [InlineData(1, 1.0, 40.5)]
    [InlineData(1, 1.15, 39.7)]
    [InlineData(20, 1.15, 22.7)]
    public void AmpMinutes_OfTheFamiliarForm_StandBesideTheSimulation(double hours, double exponent, double simulated)
    {
        var compared = Assert.Single(LoadAnalysisStudy.Run(Derated(hours, exponent)).AmpMinutes);

        Assert.Equal(25.5, compared.Form.Cruise!.Value.Minutes, 0.05);
        Assert.Equal(40.5, compared.Form.Total!.Value.Minutes, 0.05);
        Assert.Equal((38, 5, 29), (compared.Form.Before.Amperes, compared.Form.TimeBefore.Minutes, compared.Form.Shed.Amperes));
        Assert.Equal((42, 10), (compared.Form.Landing.Amperes, compared.Form.TimeLanding.Minutes));
        Assert.Equal(simulated, compared.Simulated!.Value.Minutes, 0.05);
        Assert.Equal(exponent > 1, compared.Why.Any(sentence => sentence.Contains("at any current", StringComparison.Ordinal)));
    }

    [Fact]
    public void AmpMinutes_WhenRecognitionAndLandingTakeAll_HaveNoTotal()
    {
        var form = new AmpMinutes(
            Charge.FromAmpereHours(1), Current.FromAmperes(38), Duration.FromMinutes(5), Current.FromAmperes(29), Current.FromAmperes(42), Duration.FromMinutes(10));

        Assert.Null(form.Cruise);
        Assert.Null(form.Total);
    }

    [Fact]
    public void AmpMinutes_WithAnAlternatorLeft_AreNotAsked() =>
        Assert.Empty(LoadAnalysisStudy.Run(Panel() with { FailureCases = [Case()] }).AmpMinutes);

    // 5 A and 60 W at 14 V are 9.286 A; behind an efficiency of 85 % they take 9.286 x 14/(28 x 0.85) = 5.462 A at 28 V, beside 6 A of the pump.
    [Fact]
    public void Loads_BehindAConverter_DrawAtItsVoltageAndCountWithWhatItTakes()
    {
        var result = LoadAnalysisStudy.Run(Mixed());

        Assert.Equal([(28, 6), (14, 5), (14, 4.286)], result.Items.Select(item => (item.Nominal.Volts, Math.Round(item.Draw.Amperes, 3))).ToArray());
        Assert.Equal(
            [("main", 6), ("avionics", 9.286), (null, 11.462)],
            result.Totals.Select(total => (total.Bus, Math.Round(total.Mean.Amperes, 3))).ToArray());
        Assert.Equal(11.462 / 60, Assert.Single(result.Shares).Fraction, 1e-5);
        var compared = Assert.Single(result.AmpMinutes);
        Assert.Equal((24, 11.462), (compared.Form.Usable.AmpereHours, Math.Round(compared.Form.Shed.Amperes, 3)));
        Assert.Contains(compared.Why, sentence => sentence.EndsWith("as the bus before it falls: radio, display.", StringComparison.Ordinal));
        Assert.DoesNotContain(compared.Why, sentence => sentence.Contains("constant power draws more", StringComparison.Ordinal));
    }

    // The 7 Ah at 14 V are 3.5 Ah at 28 V, and 9.286 A at 14 V are 4.643 A: no converter lies between.
    [Fact]
    public void AmpMinutes_WithABatteryBehindTheConverter_TakeItWithoutTheLosses()
    {
        var scenario = Mixed();
        scenario = scenario with { Batteries = [.. scenario.Batteries, Battery("backup", "avionics", 7, 20, 1, Table((0, 12), (100, 12.8)), PiecewiseLinear.Constant(20))] };

        var form = Assert.Single(LoadAnalysisStudy.Run(scenario).AmpMinutes).Form;

        Assert.Equal((27.5, 10.643), (form.Usable.AmpereHours, Math.Round(form.Shed.Amperes, 3)));
    }

    private static Scenario Mixed() => Scenario() with
    {
        System = SystemVoltage.Volts28,
        Buses = [Bus("main"), Bus("avionics")],
        Batteries = [Battery("battery", "main", 24, 20, 1, Table((0, 24), (100, 25.6)), PiecewiseLinear.Constant(20))],
        Alternators = [Alternator("alternator", "main", 28.4, 10, 60)],
        Chargers =
        [
            new Charger
            {
                Name = "converter", From = "main", To = "avionics", Output = Voltage.FromVolts(13.8), Limit = Current.FromAmperes(20),
                Efficiency = 0.85, Droop = Resistance.FromMilliohms(5),
            },
        ],
        Loads = [Amperes("pump", "main", 6), Amperes("radio", "avionics", 5), Watts("display", "avionics", 60)],
        FailureCases = [Case(At(0, (ActionVerb.Fail, "alternator")))],
    };

    private static Scenario Panel(params ImmutableArray<Load> more) => Scenario(0.1) with
    {
        Buses = [Bus("bus"), Bus("far")],
        Batteries = [Battery("battery", "bus", 20, 20, 1, Table((0, 12), (100, 12.8)), PiecewiseLinear.Constant(10))],
        Alternators = [Alternator("generator", "bus", 14.2, 5, 35)],
        Loads = [Amperes("panel", "bus", 23.85), Amperes("strobe", "bus", 2.30) with { Peak = Current.FromAmperes(7.10) }, .. more],
    };

    private static Scenario Derated(double hours, double exponent) => Scenario() with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", 30, hours, exponent, Table((0, 12), (100, 12)), PiecewiseLinear.Constant(1)) with { Health = 0.75 }],
        Loads =
        [
            Amperes("essentials", "bus", 29, 5),
            Amperes("comforts", "bus", 9) with { IsEssential = false },
            Amperes("landing_lights", "bus", 13) with { IsEssential = false, IsOn = false },
        ],
        Landing = new Landing(["landing_lights"], Duration.FromMinutes(10)),
        FailureCases = [Case(At(5, (ActionVerb.Shed, "comforts")))],
    };
}
