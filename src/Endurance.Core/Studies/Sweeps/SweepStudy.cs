using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Adjustment;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.Sweeps;

/// <summary>Runs every case over a range of one quantity.</summary>
public static class SweepStudy
{
    /// <param name="scenario">The scenario.</param>
    /// <param name="quantity">What is varied.</param>
    /// <param name="from">First value, SI.</param>
    /// <param name="to">Last value, SI; may be below the first.</param>
    /// <param name="steps">Number of values, at least 2, ends included.</param>
    /// <param name="options">Numerical settings.</param>
    /// <param name="progress">Called with the number of values done and of all values, from any thread.</param>
    /// <param name="cancellation">Stops the study.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ImmutableArray<SweepPoint> Run(
        Scenario scenario,
        AdjustableQuantity quantity,
        double from,
        double to,
        int steps,
        SimulationOptions options,
        Action<int, int>? progress = null,
        CancellationToken cancellation = default)
    {
        var done = 0;
        var points = new SweepPoint[steps];
        StudyLoop.For(steps, cancellation, i =>
        {
            var value = from + ((to - from) * i / (steps - 1));
            var changed = quantity.Set(scenario, value);
            var simulator = new Simulator(changed);
            points[i] = new SweepPoint(value, [.. changed.FailureCases.Select(one =>
                Judgement.Of(changed, one, simulator.RunUntilChatter(one, options, cancellation)))]);
            progress?.Invoke(Interlocked.Increment(ref done), steps);
        });
        return [.. points];
    }

    /// <summary>Every case at the low and the high end of each tolerance alone: its 5 % and 95 % points.</summary>
    public static ImmutableArray<SensitivityRow> Sensitivity(Scenario scenario, SimulationOptions options, CancellationToken cancellation = default)
    {
        const double low = 0.05, high = 0.95;
        var rows = new SensitivityRow[scenario.Tolerances.Length];
        StudyLoop.For(rows.Length, cancellation, i =>
        {
            var tolerance = scenario.Tolerances[i];
            var quantity = AdjustableQuantities.Find(scenario, tolerance.Quantity)
                ?? throw new ArgumentException($"The scenario has no quantity {tolerance.Quantity}.", nameof(scenario));
            double from = tolerance.Distribution.Quantile(low), to = tolerance.Distribution.Quantile(high);
            var ends = Run(scenario, quantity, from, to, 2, options, progress: null, cancellation);
            rows[i] = new SensitivityRow(tolerance.Quantity, ends[0], ends[1]);
        });
        return [.. rows];
    }
}
