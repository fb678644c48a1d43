using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Adjustment;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.Spread;

/// <summary>Draws scenarios within the tolerances and runs every failure case of each.</summary>
public static class SpreadStudy
{
    /// <summary>One case of one scenario drawn.</summary>
    private readonly record struct Sample(double Seconds, bool[] Met, BreakOff? BreakOff);

    /// <summary>One result a case, in the order of the scenario; the same for the same seed, whatever the number of threads.</summary>
    /// <exception cref="ArgumentException">A tolerance names a quantity that the scenario does not have.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ImmutableArray<SpreadCase> Run(Scenario scenario, SpreadOptions options, CancellationToken cancellation = default)
    {
        var tolerances = AdjustableQuantities.InOrderOfUse(scenario.Tolerances);
        var quantities = tolerances.Select(tolerance => Quantity(scenario, tolerance)).ToArray();
        var sources = scenario.Tolerances.Select(tolerance => tolerance.Source).Distinct(StringComparer.Ordinal).ToList();
        var drawnBy = tolerances.Select(tolerance => sources.IndexOf(tolerance.Source)).ToArray();
        var points = LatinHypercube.Draw(options.Samples, sources.Count, options.Seed);
        var outcomes = new Sample[options.Samples][];
        var done = 0;
        StudyLoop.For(options.Samples, cancellation, i =>
        {
            var drawn = scenario;
            for (var d = 0; d < quantities.Length; d++)
                drawn = quantities[d].Set(drawn, tolerances[d].Distribution.Quantile(points[i][drawnBy[d]]));
            outcomes[i] = RunAll(drawn, options.Simulation, cancellation);
            options.Progress?.Invoke(Interlocked.Increment(ref done), options.Samples);
        });
        return [.. scenario.FailureCases.Select((one, c) => Collect(scenario, one, [.. outcomes.Select(sample => sample[c])]))];
    }

    private static AdjustableQuantity Quantity(Scenario scenario, Tolerance tolerance) =>
        AdjustableQuantities.Find(scenario, tolerance.Quantity)
        ?? throw new ArgumentException($"The scenario has no quantity {tolerance.Quantity}.", nameof(tolerance));

    private static Sample[] RunAll(Scenario drawn, SimulationOptions options, CancellationToken cancellation)
    {
        var simulator = new Simulator(drawn);
        var results = new Sample[drawn.FailureCases.Length];
        for (var c = 0; c < results.Length; c++)
        {
            var judged = Judgement.Of(drawn, drawn.FailureCases[c], simulator.RunUntilBreakOff(drawn.FailureCases[c], options, cancellation));
            results[c] = new Sample(judged.Endurance?.Seconds ?? double.PositiveInfinity, [.. judged.Requirements.Select(one => one.Verdict == Verdict.Pass)], judged.BreakOff);
        }

        return results;
    }

    private static SpreadCase Collect(Scenario scenario, FailureCase failureCase, Sample[] samples)
    {
        var requirements = scenario.Requirements.Where(requirement => requirement.AppliesTo(failureCase));
        return new SpreadCase
        {
            Name = failureCase.Name,
            Seconds = [.. samples.Select(sample => sample.Seconds).Order()],
            BreakOffs = [.. samples.Select(sample => sample.BreakOff).OfType<BreakOff>().GroupBy(breakOff => breakOff.Cause).Select(alike => new BrokenOffSamples(alike.Count(), alike.First()))],
            Requirements = [.. requirements.Select((requirement, r) =>
            {
                var met = samples.Count(sample => sample.Met[r]);
                return new SpreadRequirement(requirement, met, (double)met / samples.Length, WilsonInterval.Of(met, samples.Length));
            })],
        };
    }
}
