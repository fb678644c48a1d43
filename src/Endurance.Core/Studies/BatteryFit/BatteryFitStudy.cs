using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>Finds the parameters of a battery in a log of its discharges.</summary>
/// <remarks>
/// Charge 0 is where terminal volts plus I R reach the same level in every run of the fit; lifetimes to there give capacity and exponent,
/// and the volts on the way give the EMF table. Every run is taken to start from full.
/// </remarks>
public static class BatteryFitStudy
{
    /// <summary>Written where none was measured: next to nothing, since the EMF table then holds the drop of the measured currents.</summary>
    private static readonly Resistance Unmeasured = Resistance.FromMilliohms(1);

    /// <summary>Measured exponents lie between 0.95 and 1.4; beyond these limits the runs contradict each other.</summary>
    private const double LeastExponent = 0.7;
    private const double MostExponent = 2;

    /// <summary>Of the full battery's EMF; fits of sound logs stay far below, so what is above is no discharge curve.</summary>
    private const double MostScatter = 0.04;

    /// <summary>Of all runs together; through fewer any curve goes.</summary>
    private const int FewestRows = 3;

    /// <param name="samples">By strictly rising time.</param>
    /// <param name="options">What is known besides.</param>
    /// <param name="cancellation">Stops the predictions.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static BatteryFitOutcome Run(ImmutableArray<LogSample> samples, BatteryFitOptions options, CancellationToken cancellation = default)
    {
        var found = DischargeSearch.Find(samples);
        var (choice, refusal) = RunChoice.Of(found, options);
        if (choice is null)
            return new BatteryFitOutcome(null, refusal);
        var steps = CurrentSteps.Of(samples, found.IsDischargePositive ? 1 : -1);
        var known = options.Resistance ?? (steps.Ohms is { Value: > 0 } ohms ? Resistance.FromOhms(ohms.Value) : null);
        var resistance = known ?? Unmeasured;
        if (known is not null && choice.Fitted.FirstOrDefault(run => run.MeanCurrent * resistance > run.LowestVoltage) is { } drowned)
            return new BatteryFitOutcome(null, FormattableString.Invariant($"a resistance of {resistance.Ohms:0.###} ohm would take more volts at the {drowned.MeanCurrent.Amperes:0.###} A of run {drowned.Number} than the battery has"));
        var endVolts = EndEmf(choice, resistance.Ohms, isTyped: !options.EndVoltages.IsEmpty);
        ImmutableArray<Duration> ends = [.. choice.Fitted.Select(run => run.TimeToEmf(endVolts, resistance.Ohms) ?? run.Length)];
        var early = choice.Fitted.Zip(ends).FirstOrDefault(pair => pair.Second <= options.Skip);
        if (early.First is { } tooShort)
            return new BatteryFitOutcome(null, FormattableString.Invariant($"run {tooShort.Number} reaches its end after {early.Second.Minutes:0.0} min, within the first {options.Skip.Minutes:0.#} min that are left out; choose a shorter --skip"));
        cancellation.ThrowIfCancellationRequested();
        var law = LifetimeLawFit.Of(choice.Fitted, ends, options.PeukertExponent);
        if (law.IsExponentMeasured && law.Exponent.Value is (< LeastExponent or > MostExponent))
            return new BatteryFitOutcome(null, FormattableString.Invariant($"the runs together give an exponent of {Math.Round(law.Exponent.Value, 2) + 0.0:0.00}, so they cannot all be discharges from full to the same end; choose among them with --run"));
        var observed = choice.Fitted.Select((run, i) => Observations(run, law, resistance.Ohms, options.Skip, ends[i])).ToImmutableArray();
        if (observed.Sum(run => run.Length) is < FewestRows and var rows)
            return new BatteryFitOutcome(null, FormattableString.Invariant($"{rows} {(rows == 1 ? "row lies" : "rows lie")} between the first {options.Skip.Minutes:0.#} min that are left out and the end, and a curve needs {FewestRows}; choose a shorter --skip, or log more often"));
        var (emf, isLevelled) = EmfTableFit.Of(observed, endVolts);
        var fitted = FittedBattery.Of(law, law.Exponent.Value, emf, resistance, options.Rated);
        var written = FittedBattery.Of(law, Math.Max(1, law.Exponent.Value), emf, resistance, options.Rated);
        var result = new BatteryFitResult
        {
            Discharges = found,
            Runs = [.. found.Runs.Select(run => Compared(run, choice, law, fitted, written, options.Skip, cancellation))],
            EndVoltages = choice.EndVoltages,
            Law = law,
            Emf = emf,
            Steps = steps,
            Resistance = resistance,
            IsResistanceKnown = known is not null,
            IsResistanceMeasured = known is not null && options.Resistance is null,
            Written = written,
            Health = options.Rated is { } rated ? law.HealthAgainst(rated) : null,
            Tests = CapacityTests.Of(found.Runs, options, choice, law.Exponent.Value),
            Findings = [],
        };
        var scattered = result.Runs.FirstOrDefault(run => run.IsFitted && run.RootMeanSquareVolts > MostScatter * emf[^1].Volts.Value);
        if (scattered is not null)
            return new BatteryFitOutcome(null, FormattableString.Invariant($"the voltage of run {scattered.Run.Number} does not follow the curve of the fit: it is off by {scattered.RootMeanSquareVolts:0.00} V (rms); choose other runs with --run, or check the log"));
        return new BatteryFitOutcome(result with { Findings = FitFindings.Of(result, options, choice, isLevelled) }, null);
    }

    /// <summary>The highest level of volts plus I R that lets every run of the fit get to its end.</summary>
    private static double EndEmf(RunChoice choice, double ohms, bool isTyped) => choice.Fitted.Max(run =>
    {
        if (!isTyped)
            return run.LowestEmf(ohms);
        var end = run.TimeTo(choice.EndVoltages[^1])!.Value;
        return choice.EndVoltages[^1].Volts + (run.Points.First(point => point.Seconds >= end.Seconds).Amperes * ohms);
    });

    private static ImmutableArray<(double Charge, double Volts)> Observations(DischargeRun run, LifetimeLaw law, double ohms, Duration skip, Duration end)
    {
        var charges = Charges(run, law);
        return [.. run.Points
            .Select((point, i) => (Point: point, Charge: charges[i]))
            .Where(pair => pair.Point.Seconds >= skip.Seconds && pair.Point.Seconds <= end.Seconds && pair.Charge >= 0)
            .Select(pair => (pair.Charge, pair.Point.Volts + (pair.Point.Amperes * ohms)))];
    }

    private static double[] Charges(DischargeRun run, LifetimeLaw law) =>
        [.. run.LifeUsedAtPoints(law.Exponent.Value, law.Pivot.Amperes).Select(used => 1 - (used / law.PivotLifetime.Seconds))];

    private static RunFit Compared(
        DischargeRun run, RunChoice choice, LifetimeLaw law, Battery fitted, Battery written, Duration skip, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var charges = Charges(run, law);
        ImmutableArray<RunPoint> modelled = [.. run.Points.Zip(charges, (point, charge) => (Point: point, Charge: charge))
            .Where(pair => pair.Charge >= 0)
            .Select(pair => pair.Point with { Volts = fitted.Emf.At(pair.Charge) - (pair.Point.Amperes * fitted.Resistance.At(pair.Charge)) })];
        var misfits = run.Points.Zip(modelled).Where(pair => pair.First.Seconds >= skip.Seconds).Select(pair => pair.First.Volts - pair.Second.Volts).ToArray();
        return new RunFit
        {
            Run = run,
            IsFitted = choice.Fitted.Contains(run),
            Ends = [.. choice.EndVoltages.Select(end => new EndTime
            {
                Voltage = end,
                Measured = run.TimeTo(end) is { } reached && reached > Duration.Zero ? reached : null,
                Predicted = DischargePrediction.TimeTo(fitted, run.MeanCurrent, end),
                PredictedAsWritten = DischargePrediction.TimeTo(written, run.MeanCurrent, end),
            })],
            Modelled = modelled,
            RootMeanSquareVolts = misfits.Length == 0 ? null : Math.Sqrt(misfits.Average(volts => volts * volts)),
        };
    }
}
