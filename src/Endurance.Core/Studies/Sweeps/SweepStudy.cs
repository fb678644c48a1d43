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
            points[i] = Point(quantity.Set(scenario, value), quantity.Held(value), options, cancellation);
            progress?.Invoke(Interlocked.Increment(ref done), steps);
        });
        return [.. points];
    }

    /// <summary>Every case at the low and the high end of each tolerance alone, or of each group of them: their 5 % and 95 % points.</summary>
    public static ImmutableArray<SensitivityRow> Sensitivity(Scenario scenario, SimulationOptions options, CancellationToken cancellation = default)
    {
        const double low = 0.05, high = 0.95;
        var sources = scenario.Tolerances.GroupBy(tolerance => tolerance.Source, StringComparer.Ordinal).Select(group => group.ToImmutableArray()).ToArray();
        var rows = new SensitivityRow[sources.Length];
        StudyLoop.For(rows.Length, cancellation, i =>
            rows[i] = new SensitivityRow(sources[i], At(scenario, sources[i], low, options, cancellation), At(scenario, sources[i], high, options, cancellation)));
        return [.. rows];
    }

    private static SweepPoint At(Scenario scenario, ImmutableArray<Tolerance> tolerances, double share, SimulationOptions options, CancellationToken cancellation)
    {
        var moved = scenario;
        var value = share;
        foreach (var tolerance in AdjustableQuantities.InOrderOfUse(tolerances))
        {
            var quantity = AdjustableQuantities.Find(scenario, tolerance.Quantity)
                ?? throw new ArgumentException($"The scenario has no quantity {tolerance.Quantity}.", nameof(tolerances));
            value = quantity.Held(tolerance.Distribution.Quantile(share));
            moved = quantity.Set(moved, value);
        }

        return Point(moved, tolerances.Length == 1 ? value : share, options, cancellation);
    }

    private static SweepPoint Point(Scenario changed, double value, SimulationOptions options, CancellationToken cancellation)
    {
        var simulator = new Simulator(changed);
        return new SweepPoint(value, [.. changed.FailureCases.Select(one => Judgement.Of(changed, one, simulator.RunUntilBreakOff(one, options, cancellation)))]);
    }
}
