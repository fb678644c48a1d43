using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;
using Endurance.Tests.Yaml;
using Endurance.Yaml;
using FsCheck.Xunit;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class ReconciliationTests
{
    public static TheoryData<string> Files => ShippedScenarioTests.Files;

    /// <summary>12 V behind 100 mohm and three loads, each of its own kind; the last has 50 mohm of wire.</summary>
    private static Scenario Bench => Scenario(horizonHours: 2) with
    {
        Title = "Bench",
        Buses = [Bus("bus", 10)],
        Batteries = [Battery("battery", "bus", 20, 20, 1, Table((0, 11), (100, 12)), PiecewiseLinear.Constant(100))],
        Loads = [Watts("display", "bus", 24, 9) with { IsEssential = true }, Amperes("radio", "bus", 1), Ohms("heater", "bus", 6) with { Wire = Wire(50) }],
        FailureCases = [Case()],
        Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(60) }],
    };

    [Theory]
    [MemberData(nameof(Files))]
    public void Card_FilledInAsPredicted_ChangesNothingAndClaimsNothing(string file)
    {
        var card = new MeasuredCard(ShippedScenarioTests.Read(file));

        var result = ReconciliationStudy.Run(card.Scenario, card.Plan, card.AsPredicted);

        Assert.Empty(result.Findings);
        Assert.Equal(result.Readings.Length, result.Count(ReadingVerdict.InTolerance));
        Assert.All(result.Loads, load => Assert.True(load.IsAsDrawn));
        Assert.Equal(
            result.Before.Select(one => (one.Name, one.Endurance, one.Verdict, one.LimitedBy)),
            result.After.Select(one => (one.Name, one.Endurance, one.Verdict, one.LimitedBy)));
    }

    /// <summary>11.5 V times 2.2 A; 1.1 A; and (11.5 V - 1.8 A x 50 mohm) / 1.8 A.</summary>
    [Fact]
    public void Loads_MeasuredAlone_KeepTheirKind()
    {
        var loads = Reconciled(("display", 2.2, 11.5), ("radio", 1.1, 11.5), ("heater", 1.8, 11.5)).Loads;

        Assert.Equal(25.3, Assert.IsType<ConstantPower>(loads[0].Measured.Demand).Power.Watts, 1e-9);
        Assert.Equal(1.1, Assert.IsType<ConstantCurrent>(loads[1].Measured.Demand).Current.Amperes);
        Assert.Equal(6.33889, Assert.IsType<ConstantResistance>(loads[2].Measured.Demand).Resistance.Ohms);
        Assert.All(loads, load => Assert.Equal(LoadBasis.Measured, load.Measured.Basis));
        Assert.Equal(Bench.Loads[0].Minimum, loads[0].Measured.Minimum);
    }

    [Fact]
    public void Loads_WithoutVolts_AreTakenOverWhereTheyDrawAConstantCurrent()
    {
        var result = Reconciled(("display", 2.2, null), ("radio", 1.1, null));

        Assert.Equal("radio", Assert.Single(result.Loads).Drawn.Name);
        Assert.Equal(new Finding("load-without-volts", Severity.Caution, "display", "2.2 A", "Its current was measured at T2 and not the volts there; a draw in watts or ohms cannot be had without them, so it stays as the scenario has it. Measure bus at that point too."), Assert.Single(result.Findings));
    }

    /// <summary>24 W at first and 30 W measured: at about 11.5 V, 2.6 A of 4.9 A become 3.2 A of 5.5 A.</summary>
    [Fact]
    public void Minutes_WithAHungrierLoad_AreFewerAndJudgedAnew()
    {
        var scenario = Bench with { Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(115) }], Batteries = [Bench.Batteries[0] with { RatedCapacity = Charge.FromAmpereHours(10) }] };
        var card = new MeasuredCard(scenario);

        var result = ReconciliationStudy.Run(scenario, card.Plan, [.. Readings(card.Plan, "display", 2.75, 11.7)]);

        Assert.Equal(Verdict.Pass, result.Before[0].Verdict);
        Assert.True(result.After[0].Endurance!.Value.Minutes < result.Before[0].Endurance!.Value.Minutes - 5);
        Assert.Equal(Verdict.Fail, result.After[0].Verdict);
        Assert.False(result.IsMet);
    }

    [Fact]
    public void Load_OutOfTolerance_IsNamedWithWhatToDo()
    {
        var result = Reconciled(("radio", 1.35, null));

        Assert.Equal(new Finding("load-draws-otherwise", Severity.Caution, "radio", "+35 %", "T3 reads as if radio draws more than the scenario says. Measure it once more as it is used in flight; if it stays so, plan with the measured draw."), Assert.Single(result.Findings));
    }

    /// <summary>Each is 0.15 A up and within tolerance; together they are 0.45 A up, which the sum does not forgive.</summary>
    [Fact]
    public void Sum_OfLoadsEachWithinTolerance_IsNoRiddle()
    {
        var scenario = Bench with { Loads = [.. Enumerable.Range(1, 3).Select(i => Amperes($"lamp_{i}", "bus", 0.5))] };
        var card = new MeasuredCard(scenario);
        ImmutableArray<MeasuredReading> alone = [.. scenario.Loads.SelectMany(load => Readings(card.Plan, load.Name, 0.65, null))];
        var all = card.Plan.Points.Single(point => point.Group == TestGroup.AllLoads).Number;

        var result = card.Reconciled([.. alone, new MeasuredReading(all, ReadingKind.BatteryAmperes, "battery", 1.95)]);

        Assert.Equal(1, result.Count(ReadingVerdict.OutOfTolerance));
        Assert.Empty(result.Findings);
    }

    /// <summary>The display draws its 24 W everywhere else on the card; a slip in amperes or in volts would have it run on a tenth or on four fifths of its watts.</summary>
    [Theory]
    [InlineData(ReadingKind.LoadAmperes, "display", 0.21, "0.21 A")]
    [InlineData(ReadingKind.BusVolts, "bus", 9.8, "2.03 A")]
    public void Load_LowerAloneThanOnTheRestOfTheCard_IsNotTakenOver(ReadingKind kind, string part, double slip, string value)
    {
        var card = new MeasuredCard(Bench);
        var alone = card.Plan.Points.Single(point => point.Group == TestGroup.LoadAlone && point.Parts[0] == "display").Number;

        var result = card.Reconciled([.. card.AsPredicted.Select(reading => reading.Point == alone && reading.Kind == kind && reading.Part == part ? reading with { Value = slip } : reading)]);

        Assert.Equal(["radio", "heater"], result.Loads.Select(load => load.Drawn.Name));
        Assert.Equal(
            new Finding("load-not-taken-over", Severity.Warning, "display", value, $"T{alone} has it draw less than the scenario says, and the other points of the card do not: its draw stays as the scenario has it. Measure it again, volts and amperes, with one wire of its supply in the clamp, and look at the decimal points."),
            Assert.Single(result.Findings));
    }

    [Fact]
    public void Load_LowerWhereNothingElseWasMeasured_IsTakenOver() =>
        Assert.Equal(1.2, Assert.Single(Reconciled(("display", 1.2, 11.9)).Loads).Amperes);

    [Fact]
    public void Warning_ThatComesOnLower_IsSaidToBeRecognisedLater()
    {
        var card = new MeasuredCard(Bench with { Warnings = [new LowVoltageWarning { Name = "lamp", Senses = "bus", Below = Voltage.FromVolts(11.5), For = Duration.Zero }] });
        var point = card.Plan.Points.Single(point => point.Group == TestGroup.Warning).Number;

        var result = card.Reconciled([.. card.AsPredicted.Where(reading => reading.Point != point), new MeasuredReading(point, ReadingKind.BusVolts, "bus", 10.9)]);

        Assert.Equal(
            new Finding("warning-level-off", Severity.Warning, "lamp", "-0.60 V", $"At T{point} it came on at 10.90 V and not at 11.50 V, so it is recognised later than the minutes here have it. Set its level, or type 10.9 V as its `below`, and run the cases again."),
            Assert.Single(result.Findings));
    }

    /// <summary>14.2 V behind 10 mohm and 4.6 A.</summary>
    [Fact]
    public void Alternator_ThatHoldsOtherVolts_IsNamed()
    {
        var card = new MeasuredCard(Bench with { Alternators = [Alternator("alternator", "bus", 14.2, 10, 40)] });
        var point = card.Plan.Points.Single(point => point.Group == TestGroup.EngineRunning);

        var result = card.Reconciled([.. card.AsPredicted.Where(reading => reading.Point != point.Number), new MeasuredReading(point.Number, ReadingKind.BusVolts, "bus", 13.5)]);

        var finding = Assert.Single(result.Findings);
        Assert.Equal(("source-volts-off", Severity.Warning, "alternator"), (finding.Code, finding.Severity, finding.Part));
        Assert.StartsWith(FormattableString.Invariant($"At T{point.Number} bus had 13.50 V and not {point.Readings[0].Predicted:0.00} V."), finding.Message, StringComparison.Ordinal);
    }

    /// <summary>Not to its end, so no battery is blamed; nor is it passed over.</summary>
    [Fact]
    public void TimedRun_WithASampleThatIsOff_IsNotPassedOver()
    {
        var card = new MeasuredCard(Bench);
        var run = card.Plan.Points.Where(point => point.Group == TestGroup.EnduranceRun).ToList();

        var result = card.Reconciled([.. run.Select((point, i) => new MeasuredReading(point.Number, ReadingKind.BusVolts, "bus", point.Readings[0].Predicted - (i == 1 ? 0.5 : 0)))]);

        var finding = Assert.Single(result.Findings);
        Assert.Equal(("readings-unexplained", "bus"), (finding.Code, finding.Part));
        Assert.StartsWith($"T{run[1].Number} reads out of tolerance", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_ThatNothingExplains_IsSaidToBeOne()
    {
        var card = new MeasuredCard(Bench);
        var all = card.Plan.Points.Single(point => point.Group == TestGroup.AllLoads).Number;

        var result = card.Reconciled([.. card.AsPredicted.Where(reading => reading.Point != all), new MeasuredReading(all, ReadingKind.BatteryAmperes, "battery", 9)]);

        Assert.Equal(new Finding("readings-unexplained", Severity.Caution, "battery", "1 reading", $"T{all} reads out of tolerance, and no cause that is known fits. Measure again with a zeroed meter, then the points that are still blank, before you look further."), Assert.Single(result.Findings));
    }

    [Fact]
    public void TimedRun_ThatSagsToItsEnd_PointsAtTheBattery()
    {
        var card = new MeasuredCard(Bench);
        var run = card.Plan.Points.Where(point => point.Group == TestGroup.EnduranceRun).ToList();

        var result = card.Reconciled([.. run.Select((point, i) => new MeasuredReading(point.Number, ReadingKind.BusVolts, "bus", point.Readings[0].Predicted - (0.06 * i)))]);

        var finding = Assert.Single(result.Findings);
        Assert.Equal(("battery-runs-down-early", "battery"), (finding.Code, finding.Part));
        Assert.Contains($"up to T{run[^1].Number}, while nothing else explains it", finding.Message, StringComparison.Ordinal);
    }

    [Property(MaxTest = 20)]
    public bool Rows_InAnyOrder_GiveTheSameReport(int seed)
    {
        var card = new MeasuredCard(Bench);
        var measured = card.Of(setup => setup with
        {
            Scenario = setup.Scenario with { Loads = [.. setup.Scenario.Loads.Select(load => load.Name == "display" ? load with { Demand = new ConstantPower(Power.FromWatts(40)) } : load)] },
        });
        var shuffled = measured.ToArray();
        new Random(seed).Shuffle(shuffled);

        return ReconciliationJson.Write(card.Reconciled(measured)) == ReconciliationJson.Write(card.Reconciled([.. shuffled]));
    }

    private static ReconciliationResult Reconciled(params (string Load, double Amperes, double? Volts)[] measured)
    {
        var card = new MeasuredCard(Bench);
        return card.Reconciled([.. measured.SelectMany(reading => Readings(card.Plan, reading.Load, reading.Amperes, reading.Volts))]);
    }

    private static IEnumerable<MeasuredReading> Readings(GroundTestPlan plan, string load, double amperes, double? volts)
    {
        var point = plan.Points.Single(point => point.Group == TestGroup.LoadAlone && point.Parts[0] == load).Number;
        yield return new MeasuredReading(point, ReadingKind.LoadAmperes, load, amperes);
        if (volts is { } measured)
            yield return new MeasuredReading(point, ReadingKind.BusVolts, "bus", measured);
    }
}
