using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.Sizing;

/// <summary>Finds the edge of the values that pass: scans first, since shedding and drop-out can turn the answer back, then bisects.</summary>
/// <param name="values">Values of the scan, strictly rising.</param>
/// <param name="smallestThatPasses">Whether the smallest passing value is looked for; otherwise the largest.</param>
/// <param name="with">The scenario with a value.</param>
internal sealed class LimitSearch(ImmutableArray<double> values, bool smallestThatPasses, Func<double, Scenario> with)
{
    /// <summary>Relative width at which the bisection stops.</summary>
    private const double Accuracy = 1e-5;

    /// <summary>Width at which it stops for a limit at nothing, as a share of the largest value.</summary>
    private const double Least = 1e-12;

    /// <summary>About the number of trials of a search that bisects.</summary>
    public int MostTrials => values.Length + values.Zip(values.Skip(1), (a, b) => (int)Math.Ceiling(Math.Log2((b - a) / (Accuracy * b)))).Max();

    /// <param name="options">Numerical settings.</param>
    /// <param name="tried">Called after each trial, from any thread.</param>
    /// <param name="cancellation">Stops the search.</param>
    public LimitResult Run(SimulationOptions options, Action tried, CancellationToken cancellation)
    {
        Trial Try(double value)
        {
            var trial = Trials.Of(with(value), value, options, cancellation);
            tried();
            return trial;
        }

        var scan = new Trial[values.Length];
        StudyLoop.For(values.Length, cancellation, i => scan[i] = Try(values[i]));
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

        var at = Bisect(safeFirst[passing - 1], safeFirst[passing].Value, Try);
        return new LimitResult { Limit = at.Value, IsBeyondRange = false, IsNotMonotonic = isNotMonotonic, AtLimit = at, Curve = curve };
    }

    private Trial Bisect(Trial passing, double failing, Func<double, Trial> trialOf)
    {
        while (Math.Abs(passing.Value - failing) > Math.Max(Least * values[^1], Accuracy * Math.Max(Math.Abs(passing.Value), Math.Abs(failing))))
        {
            var middle = passing.Value + ((failing - passing.Value) / 2);
            var trial = trialOf(middle);
            if (trial.Passes)
                passing = trial;
            else
                failing = middle;
        }

        return passing;
    }
}
