using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.Sizing;

/// <summary>Finds the edge of the values that pass: scans first, since shedding and drop-out can turn the answer back, then bisects.</summary>
internal static class LimitSearch
{
    /// <summary>Relative width at which the bisection stops.</summary>
    private const double Accuracy = 1e-5;

    /// <param name="values">Values of the scan, strictly rising.</param>
    /// <param name="smallestThatPasses">Whether the smallest passing value is looked for; otherwise the largest.</param>
    /// <param name="with">The scenario with a value.</param>
    /// <param name="options">Numerical settings.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static LimitResult Run(
        ImmutableArray<double> values, bool smallestThatPasses, Func<double, Scenario> with, SimulationOptions options, CancellationToken cancellation)
    {
        var scan = new Trial[values.Length];
        StudyLoop.For(values.Length, cancellation, i => scan[i] = Trials.Of(with(values[i]), values[i], options, cancellation));
        var safeFirst = smallestThatPasses ? scan.Reverse().ToArray() : scan;
        var passing = safeFirst.TakeWhile(trial => trial.Passes).Count();
        var curve = scan.ToImmutableArray();
        var isNotMonotonic = safeFirst.Skip(passing).Any(trial => trial.Passes);
        if (passing == 0 || passing == safeFirst.Length)
        {
            return new LimitResult
            {
                Limit = passing == 0 ? null : safeFirst[^1].Value,
                IsBeyondRange = passing > 0,
                IsNotMonotonic = isNotMonotonic,
                AtLimit = passing == 0 ? null : safeFirst[^1],
                Curve = curve,
            };
        }

        var at = Bisect(safeFirst[passing - 1], safeFirst[passing].Value, with, options, cancellation);
        return new LimitResult { Limit = at.Value, IsBeyondRange = false, IsNotMonotonic = isNotMonotonic, AtLimit = at, Curve = curve };
    }

    private static Trial Bisect(Trial passing, double failing, Func<double, Scenario> with, SimulationOptions options, CancellationToken cancellation)
    {
        while (Math.Abs(passing.Value - failing) > Accuracy * Math.Max(Math.Abs(passing.Value), Math.Abs(failing)))
        {
            var middle = passing.Value + ((failing - passing.Value) / 2);
            var trial = Trials.Of(with(middle), middle, options, cancellation);
            if (trial.Passes)
                passing = trial;
            else
                failing = middle;
        }

        return passing;
    }
}
