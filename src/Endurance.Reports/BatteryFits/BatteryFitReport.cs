using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Studies.BatteryFit;
using static Endurance.Reports.StudyBlocks;

namespace Endurance.Reports;

/// <summary>A fit for people.</summary>
public static class BatteryFitReport
{
    /// <param name="log">Name of the log.</param>
    /// <param name="result">Its fit.</param>
    /// <param name="pass">Fraction of the rating that passes a capacity test.</param>
    public static ReportDocument Describe(string log, BatteryFitResult result, double pass) => new(
        $"Battery fit: {log}",
        [
            new ReportParagraph(Summary(result)),
            Discharges(result),
            .. result.EndVoltages.Select((end, i) => Minutes(result, end, i)),
            Parameters(result),
            Emf(result),
            .. Tests(result, pass),
            new ReportList("What to know about these numbers", [.. result.Findings.Select(finding => $"{Wording.Of(finding.Severity)}: {finding.Message}")]),
            new ReportCode("For a scenario, under batteries:", "yaml", BatteryFragment.Write(log, result)),
        ]);

    private static string Summary(BatteryFitResult result)
    {
        var fitted = result.Runs.Where(run => run.IsFitted).ToList();
        var volts = FitText.RootMeanSquare(fitted.Select(run => run.RootMeanSquareVolts)) is { } rms ? $"{RoundedNumber.Fixed(rms * 1e3, 1)} mV" : CellText.Absent;
        var minutes = FitText.Percent(FitText.RootMeanSquare(fitted.SelectMany(run => run.Ends).Select(end => end.Error)));
        return $"Fitted to {FitText.Fitted(result)} of {result.Runs.Length}; residuals of these (rms): {volts}, {minutes} % of the minutes. "
            + $"The log writes discharge as {(result.Discharges.IsDischargePositive ? "positive" : "negative")} amperes; up to {RoundedNumber.Short(result.Discharges.Threshold.Amperes, 3)} A counts as rest.";
    }

    private static ReportTable Discharges(BatteryFitResult result) => new(
        "Discharges",
        [new("run"), new("starts at", "min"), new("rest before", "V"), new("mean", "A"), new("lasts", "min"), new("delivered", "Ah"), new("lowest", "V"), new("temperature", "degC")],
        [.. result.Runs.Select(run => Row(
            RoundedNumber.Short(run.Run.Number, 0),
            CellText.Minutes(run.Run.Start),
            run.Run.RestVoltage is { } rest ? RoundedNumber.Fixed(rest.Volts, 3) : CellText.Absent,
            RoundedNumber.Fixed(run.Run.MeanCurrent.Amperes, 3),
            CellText.Minutes(run.Run.Length),
            RoundedNumber.Fixed(run.Run.Delivered.AmpereHours, 3),
            RoundedNumber.Fixed(run.Run.LowestVoltage.Volts, 3),
            run.Run.Temperature is { } warm ? RoundedNumber.Fixed(warm.Celsius, 1) : CellText.Absent))]);

    private static ReportTable Minutes(BatteryFitResult result, Voltage end, int index)
    {
        var isClamped = result.Law.Exponent.Value < 1;
        ImmutableArray<ReportColumn> columns =
        [
            new("run"), new("role"), new("mean", "A"), new("measured", "min"), new("by the fit", "min"), new("error", "%"),
            .. isClamped ? new ReportColumn[] { new("as written", "min"), new("error as written", "%") } : [],
            new("volts rms", "mV"),
        ];
        return new ReportTable($"Minutes to {FitText.Volts(end)}", columns, [.. result.Runs.Select(run => Minutes(run, run.Ends[index], isClamped))]);
    }

    private static ImmutableArray<ReportCell> Minutes(RunFit run, EndTime end, bool isClamped) =>
    [
        RoundedNumber.Short(run.Run.Number, 0),
        FitText.Role(run),
        RoundedNumber.Fixed(run.Run.MeanCurrent.Amperes, 3),
        CellText.MinutesOr(end.Measured, "not reached"),
        CellText.Minutes(end.Predicted),
        FitText.Percent(end.Error),
        .. isClamped ? new ReportCell[] { CellText.Minutes(end.PredictedAsWritten), FitText.Percent(end.ErrorAsWritten) } : [],
        run.RootMeanSquareVolts is { } rms ? RoundedNumber.Fixed(rms * 1e3, 1) : CellText.Absent,
    ];

    private static ReportTable Parameters(BatteryFitResult result)
    {
        var law = result.Law;
        return new ReportTable(
            "Parameters",
            [new("parameter"), new("value"), new("standard error"), new("unit"), new("from")],
            [
                Parameter($"capacity at {RoundedNumber.Short(law.Pivot.Amperes, 3)} A", law.PivotAmpereHours, 3, "Ah", $"minutes to {FitText.Volts(result.EndVoltages[^1])}"),
                Parameter("hours at that current", law.PivotHours, 3, "h", "the same"),
                Parameter("Peukert's exponent", law.Exponent, 4, "", ExponentSource(law)),
                Parameter("resistance", Resistance(result), 2, "mohm", ResistanceSource(result)),
                .. result.Health is { } health ? new[] { Parameter("health", health.Times(100), 1, "%", "capacity at the rating's own current over the rating") } : [],
            ]);
    }

    private static FittedValue Resistance(BatteryFitResult result) =>
        result.IsResistanceMeasured ? result.Steps.Ohms!.Times(1e3) : new FittedValue(result.Resistance.Ohms * 1e3, null);

    private static string ResistanceSource(BatteryFitResult result)
    {
        if (!result.IsResistanceKnown)
            return "not measured";
        return result.IsResistanceMeasured ? $"current steps: {RoundedNumber.Short(result.Steps.Usable, 0)}" : "given";
    }

    private static string ExponentSource(LifetimeLaw law)
    {
        if (law.IsExponentMeasured)
            return "minutes over current, straight in log-log";
        return law.IsExponentGiven ? "given" : "not measured";
    }

    private static ImmutableArray<ReportCell> Parameter(string name, FittedValue value, int decimals, string unit, string from) => Row(
        name,
        RoundedNumber.Fixed(value.Value, decimals),
        value.StandardError is { } error ? RoundedNumber.Fixed(error, decimals) : CellText.Absent,
        unit,
        from);

    private static ReportTable Emf(BatteryFitResult result) => new(
        "EMF over charge",
        [new("charge", "%"), new("EMF", "V"), new("standard error", "mV")],
        [.. result.Emf.Select(knot => Row(
            RoundedNumber.Short(knot.Charge * 100, 1),
            RoundedNumber.Fixed(knot.Volts.Value, 3),
            knot.Volts.StandardError is { } error ? RoundedNumber.Fixed(error * 1e3, 1) : CellText.Absent))]);

    private static ImmutableArray<ReportBlock> Tests(BatteryFitResult result, double pass)
    {
        if (result.Tests.IsEmpty)
            return [];
        return
        [
            new ReportTable(
                $"Capacity test: at least {RoundedNumber.Short(pass * 100, 1)} % of the rating",
                [new("run"), new("to", "V"), new("after", "min"), new("of the rating", "%"), new("verdict")],
                [.. result.Tests.Select(test => Row(
                    RoundedNumber.Short(test.Run, 0),
                    RoundedNumber.Fixed(test.EndVoltage.Volts, 3),
                    CellText.Minutes(test.Time),
                    OfTheRating(test, pass),
                    CellText.Judged(test.IsPassed ? Studies.FailureCases.Verdict.Pass : Studies.FailureCases.Verdict.Fail)))]),
        ];
    }

    /// <summary>A shortfall too small to show is still shown as one.</summary>
    private static string OfTheRating(CapacityTest test, double pass)
    {
        var text = FitText.Percent(test.Fraction);
        if (!test.IsPassed && string.Equals(text, FitText.Percent(pass), StringComparison.Ordinal))
            return "under " + text;
        return text + (test.IsEndReached ? "" : " or more");
    }
}
