using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Studies.BatteryFit;
using static Endurance.Tests.Studies.BenchLog;

namespace Endurance.Tests.Studies;

public sealed class BatteryFitStudyTests
{
    private static readonly RatedCapacity Label = new(Charge.FromAmpereHours(18), Duration.FromHours(20));

    [Fact]
    public void Log_OfSeveralRatesWithSteps_ReturnsTheParametersItWasMadeWith()
    {
        var fit = Fit(BenchLog.Of(Bench, hasPulses: true, 1.2, 2.5, 5), new BatteryFitOptions { Rated = Label });

        Assert.Equal(1, fit.Health!.Value, 0.005);
        Assert.Equal(Exponent, fit.Law.Exponent.Value, 0.01);
        Assert.True(fit.IsResistanceMeasured);
        Assert.Equal(Milliohms, fit.Resistance.Ohms * 1e3, Milliohms * 0.02);
        foreach (var knot in fit.Emf)
            Assert.Equal(Bench.Emf.At(knot.Charge), knot.Volts.Value, 0.005);
        Assert.All(fit.Runs, run => Assert.InRange(run.RootMeanSquareVolts!.Value, 0, 0.003));
    }

    [Fact]
    public void Log_WithDischargeNegative_IsReadTheSame()
    {
        var log = BenchLog.Of(Bench, hasPulses: true, 2, 5);
        ImmutableArray<LogSample> turned = [.. log.Select(sample => sample with { Amperes = -sample.Amperes })];

        var (fit, negative) = (Fit(log), Fit(turned));

        Assert.True(fit.Discharges.IsDischargePositive);
        Assert.False(negative.Discharges.IsDischargePositive);
        Assert.Equal(fit.Law.PivotAmpereHours.Value, negative.Law.PivotAmpereHours.Value, 1e-9);
        Assert.Equal(fit.Resistance, negative.Resistance);
    }

    [Fact]
    public void Log_OfOneRate_ReturnsCapacityAndSaysThatItTellsNoExponent()
    {
        var fit = Fit(BenchLog.Of(Bench, hasPulses: false, 2), new BatteryFitOptions { Resistance = Resistance.FromMilliohms(Milliohms) });

        var expected = Bench.LifetimeAt(Current.FromAmperes(2)).Hours * 2;
        Assert.Equal(expected, fit.Law.PivotAmpereHours.Value, expected * 0.005);
        Assert.Null(fit.Law.PivotAmpereHours.StandardError);
        Assert.False(fit.Law.IsExponentMeasured);
        Assert.Contains(fit.Findings, finding => finding.Code == "exponent-not-measured");
        Assert.DoesNotContain(fit.Findings, finding => finding.Code == "resistance-not-measured");
    }

    [Fact]
    public void Exponent_Given_IsWrittenAndCarriesTheRatingOver()
    {
        var options = new BatteryFitOptions { Rated = Label, Resistance = Resistance.FromMilliohms(Milliohms), PeukertExponent = Exponent };

        var fit = Fit(BenchLog.Of(Bench, hasPulses: false, 4), options);

        Assert.Equal(Exponent, fit.Written.PeukertExponent);
        Assert.Equal(1, fit.Health!.Value, 0.005);
        Assert.Equal(1, fit.Tests[0].Fraction, 0.005);
    }

    [Theory]
    [InlineData(0.83, true)]
    [InlineData(0.77, false)]
    public void CapacityTest_OfAWornBattery_PassesFromEightyPercent(double health, bool isPassed)
    {
        var fit = Fit(BenchLog.Of(Bench with { Health = health }, hasPulses: true, 1.5, 3), new BatteryFitOptions { Rated = Label });

        Assert.Equal(2, fit.Tests.Length);
        Assert.All(fit.Tests, test => Assert.Equal(health, test.Fraction, 0.005));
        Assert.Equal(isPassed, fit.IsPassed);
        Assert.Equal(health, fit.Written.Health, 0.005);
    }

    [Fact]
    public void Runs_Chosen_PredictTheOthers()
    {
        var fit = Fit(BenchLog.Of(Bench, hasPulses: false, 1.2, 2.5, 5), new BatteryFitOptions
        {
            Runs = [1, 3],
            EndVoltages = [Voltage.FromVolts(11.2), Voltage.FromVolts(10.9)],
            Resistance = Resistance.FromMilliohms(Milliohms),
        });

        Assert.Equal([true, false, true], fit.Runs.Select(run => run.IsFitted));
        Assert.InRange(fit.Runs[1].Ends[0].Error!.Value, -0.005, 0.005);
        // Charge 0 lies where the run at 5 A ends, so a slower one is called exhausted a little early.
        Assert.InRange(fit.Runs[1].Ends[1].Error!.Value, -0.01, 0);
        Assert.Equal([11.2, 10.9], fit.EndVoltages.Select(end => end.Volts));
    }

    [Fact]
    public void Resistance_WithoutSteps_IsNotToldAndTheReasonIs()
    {
        var log = BenchLog.Of(Bench, hasPulses: false, 2, 5).Where(sample => sample.Amperes > 0);

        var fit = Fit([.. log]);

        Assert.False(fit.IsResistanceKnown);
        var finding = Assert.Single(fit.Findings, finding => finding.Code == "resistance-not-measured");
        Assert.StartsWith("No resistance can be told: at 1 current step the rows are too far apart.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Resistance_WhereTheVoltageFollowsARowLate_IsNotTold()
    {
        var log = BenchLog.Of(Bench, hasPulses: true, 2);
        ImmutableArray<LogSample> late = [log[0], .. log.Skip(1).Zip(log, (now, before) => now with { Volts = before.Volts })];

        var fit = Fit(late);

        Assert.Null(fit.Steps.Ohms);
        Assert.True(fit.Steps.Lagging >= 6);
        Assert.False(fit.IsResistanceKnown);
    }

    [Fact]
    public void Run_BrokenOff_IsLeftOutWithAWord()
    {
        var log = BenchLog.Of(Bench, hasPulses: false, 2, 5);
        var half = log.Where(sample => sample.Seconds is < 15_000 or > 40_000).ToImmutableArray();

        var fit = Fit(half);

        Assert.Equal([false, true], fit.Runs.Select(run => run.IsFitted));
        Assert.Contains(fit.Findings, finding => finding.Code == "run-incomplete" && finding.Part == "run 1");
    }

    /// <summary>6 A for an hour, half an hour off, then 6 A to the end: the second part begins 6 Ah short of full, or 3 Ah after a charge of 6 A for that half hour.</summary>
    [Theory]
    [InlineData(0, 6, true)]
    [InlineData(-6, 3, true)]
    [InlineData(-12, 0, false)]
    public void Run_ThatDidNotStartFromFull_IsSaidToBeOne(double between, double missing, bool isSaid)
    {
        var whole = BenchLog.Of(Bench, hasPulses: false, 6).Where(sample => sample.Seconds >= 600).ToList();
        ImmutableArray<LogSample> log =
        [
            .. whole.Where(sample => sample.Seconds <= 4200),
            .. Enumerable.Range(1, 179).Select(i => new LogSample(4200 + (10 * i), 12.2 - (0.001 * i), between, null)),
            .. whole.Where(sample => sample.Seconds > 4200).Select(sample => sample with { Seconds = sample.Seconds + 1790 }),
        ];

        var fit = Fit(log, new BatteryFitOptions { Runs = [2] });

        Assert.Equal(missing, fit.Runs[1].Run.Missing!.Value.AmpereHours, 0.05);
        Assert.Equal(isSaid, fit.Findings.Any(finding => finding is { Code: "run-not-from-full", Part: "run 2", Severity: Severity.Warning }));
    }

    /// <summary>Below 1.2 A, a fiftieth of 60 A, the one at 1 A is not seen; below 0.2 A it is.</summary>
    [Theory]
    [InlineData(60, true)]
    [InlineData(10, false)]
    public void Discharge_TooSmallBesideTheLargestCurrent_IsNotLeftOutInSilence(double largest, bool isLeftOut)
    {
        var fit = Fit(BenchLog.Of(Bench, hasPulses: false, 1, largest), new BatteryFitOptions { Resistance = Resistance.FromMilliohms(Milliohms) });

        Assert.Equal(isLeftOut ? 1 : 2, fit.Runs.Length);
        var said = fit.Findings.Where(finding => finding.Code == "small-discharge-left-out").ToList();
        Assert.Equal(isLeftOut ? ["1 A"] : [], said.Select(finding => finding.Value));
        Assert.All(said, finding => Assert.Contains("beside the largest current of 60 A. If it is a discharge", finding.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(18, 20, "for a lower current, takes 1 as well, so health comes out too low. ")]
    [InlineData(11, 1, "for a higher current, takes 1 as well, so health comes out too high: a capacity test passed so proves nothing. ")]
    public void Rating_AtAnotherCurrentWithoutAnExponent_IsSaidToMislead(double ampereHours, double hours, string said)
    {
        var fit = Fit(BenchLog.Of(Bench, hasPulses: false, 3), new BatteryFitOptions { Rated = new(Charge.FromAmpereHours(ampereHours), Duration.FromHours(hours)) });

        Assert.Contains(said, Assert.Single(fit.Findings, finding => finding.Code == "exponent-not-measured").Message, StringComparison.Ordinal);
    }

    /// <summary>A warm battery holds more than it will at 25 degC; of several the one farthest from there is named.</summary>
    [Theory]
    [InlineData(18, 41, "41.0 degC", "high and the minutes too long.")]
    [InlineData(31, 4, "4.0 degC", "low, and a chemistry would take the cold off a second time.")]
    public void Temperature_OffTheRating_IsNamedWithTheWayItMisleads(double first, double second, string value, string said)
    {
        ImmutableArray<LogSample> log = [.. BenchLog.Of(Bench, hasPulses: false, 2, 5).Select(sample => sample with { Celsius = sample.Seconds < 30_000 ? first : second })];

        var finding = Assert.Single(Fit(log).Findings, finding => finding.Code == "temperature-off-25");

        Assert.Equal(value, finding.Value);
        Assert.EndsWith(said, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Request_ThatTheLogCannotAnswer_IsRefusedInASentence()
    {
        var log = BenchLog.Of(Bench, hasPulses: false, 3);

        Assert.Equal("there is no run 2; the log has run 1 alone", Refusal(log, new BatteryFitOptions { Runs = [2] }));
        Assert.StartsWith("no run goes down to 9 V: run 1 comes nearest, with 10.7", Refusal(log, new BatteryFitOptions { EndVoltages = [Voltage.FromVolts(9)] }), StringComparison.Ordinal);
        Assert.StartsWith("the log holds no discharge", Refusal([.. log.Take(9)], new BatteryFitOptions()), StringComparison.Ordinal);
        Assert.EndsWith("choose a shorter --skip", Refusal(log, new BatteryFitOptions { Skip = Duration.FromHours(20) }), StringComparison.Ordinal);
    }

    /// <summary>The one row after the first 5 min is that of the end itself, where rounding puts its charge on either side of 0.</summary>
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.2)]
    public void Log_WithoutRowsForACurve_IsRefused(double exponent)
    {
        ImmutableArray<LogSample> log = [.. Enumerable.Range(0, 12).Select(i => new LogSample(i * 330, 12.6 - (0.1 * i), i is 5 or 6 ? 4.7 + (0.1 * i) : 0, 25))];

        var refusal = Refusal(log, new BatteryFitOptions { PeukertExponent = exponent });

        Assert.Matches("^(0 rows lie|1 row lies) between the first 5 min that are left out and the end, and a curve needs 3; choose a shorter --skip, or log more often$", refusal);
    }

    [Fact]
    public void Runs_ThatContradictEachOther_AreRefused()
    {
        var log = BenchLog.Of(Bench, hasPulses: false, 4).AddRange(
            BenchLog.Of(Bench with { Health = 0.25 }, hasPulses: false, 1).Select(sample => sample with { Seconds = sample.Seconds + 1e6 }));

        Assert.StartsWith("the runs together give an exponent of 0.1", Refusal(log, new BatteryFitOptions()), StringComparison.Ordinal);
    }

    [Fact]
    public void Volts_ThatFollowNoCurve_AreRefused()
    {
        var log = BenchLog.Of(Bench, hasPulses: false, 4).Select((sample, i) => sample with { Volts = sample.Volts + (sample.Amperes > 0 ? i % 2 * 2 : 0) });

        Assert.StartsWith("the voltage of run 1 does not follow the curve of the fit: it is off by 1.", Refusal([.. log], new BatteryFitOptions()), StringComparison.Ordinal);
    }

    [Fact]
    public void Resistance_Given_ThatTheBatteryCouldNotOvercome_IsRefused() =>
        Assert.Equal(
            "a resistance of 5 ohm would take more volts at the 3 A of run 1 than the battery has",
            Refusal(BenchLog.Of(Bench, hasPulses: false, 3), new BatteryFitOptions { Resistance = Resistance.FromOhms(5) }));

    private static BatteryFitResult Fit(ImmutableArray<LogSample> log, BatteryFitOptions? options = null)
    {
        var outcome = BatteryFitStudy.Run(log, options ?? new BatteryFitOptions());
        Assert.Null(outcome.Refusal);
        return outcome.Result!;
    }

    private static string Refusal(ImmutableArray<LogSample> log, BatteryFitOptions options) => BatteryFitStudy.Run(log, options).Refusal!;
}
