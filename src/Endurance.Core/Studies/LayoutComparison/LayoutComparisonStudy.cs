using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;

namespace Endurance.Studies.LayoutComparison;

/// <summary>Runs every failure case and every single failure of several layouts.</summary>
public static class LayoutComparisonStudy
{
    /// <summary>Time before the first loss at which the end voltage is read: at the loss itself it would be the minimum of what is lost.</summary>
    private static readonly Duration BeforeLoss = Duration.FromMinutes(1);

    private static readonly Duration FinestNeeded = Duration.FromSeconds(20);

    /// <summary>One result a layout, in the order given.</summary>
    /// <param name="layouts">Each with at least one failure case.</param>
    /// <param name="tolerance">See <see cref="SimulationOptions.Tolerance"/>.</param>
    /// <param name="progress">Called with the number of failures tried and of all, from any thread.</param>
    /// <param name="cancellation">Stops the study.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ImmutableArray<LayoutResult> Run(ImmutableArray<NamedLayout> layouts, double tolerance, Action<int, int>? progress = null, CancellationToken cancellation = default)
    {
        var all = layouts.Sum(layout => SingleFailureStudy.CountRows(layout.Scenario));
        var done = 0;
        return [.. layouts.Select(layout => Run(layout, tolerance, (_, _) => progress?.Invoke(Interlocked.Increment(ref done), all), cancellation))];
    }

    private static LayoutResult Run(NamedLayout layout, double tolerance, Action<int, int> progress, CancellationToken cancellation)
    {
        var scenario = layout.Scenario;
        var options = new SimulationOptions { Tolerance = tolerance, SampleInterval = FinestNeeded };
        var cases = FailureCaseStudy.Run(scenario, scenario.FailureCases, options, cancellation);
        var failures = SingleFailureStudy.Run(scenario, new SingleFailureOptions { Progress = progress }, cancellation);
        return new LayoutResult
        {
            Name = layout.Name,
            Scenario = scenario,
            Cases = [.. cases.Select(result => Case(scenario, result))],
            Parts = PartsCount.Of(scenario),
            FailuresSurvived = failures.Count(row => row.Verdict == Verdict.Pass || (row.Verdict == Verdict.None && row.Lost.IsEmpty)),
            FailuresTried = failures.Length,
        };
    }

    private static LayoutCase Case(Scenario scenario, CaseResult result) => new()
    {
        Result = result,
        StartVoltage = !result.Run.HasBegun ? null : result.Run.Buses.FirstOrDefault(bus => string.Equals(bus.Name, scenario.EssentialBus, StringComparison.Ordinal))?.StartVoltage,
        EndVoltage = EndVoltage(scenario, result),
        HighestDiodePower = result.Run.HasBegun && result.Run.Feeds.Max(feed => feed.HighestDiodePower?.Watts) is { } watts ? Power.FromWatts(watts) : null,
        HighestJunction = result.Run.HasBegun && HighestJunction(scenario, result) is { } kelvin ? Temperature.FromKelvin(kelvin) : null,
    };

    private static double? HighestJunction(Scenario scenario, CaseResult result) => scenario.Feeds.Zip(result.Run.Feeds)
        .Where(feed => feed.First.Diode is JunctionDiode { HeatPath: not null })
        .Max(feed => feed.Second.HighestJunction?.Kelvin);

    private static Voltage? EndVoltage(Scenario scenario, CaseResult result)
    {
        if (result.Run.Trace is not { Seconds.IsEmpty: false } trace || trace.BusVolts.FirstOrDefault(bus => string.Equals(bus.Name, scenario.EssentialBus, StringComparison.Ordinal)) is not { } volts)
            return null;
        var at = result.Endurance is { } lost ? Math.Max(0, (lost - BeforeLoss).Seconds) : result.Run.End.Seconds;
        var after = trace.Seconds.Index().Where(sample => sample.Item >= at).Select(sample => sample.Index).DefaultIfEmpty(trace.Seconds.Length - 1).First();
        if (after == 0 || trace.Seconds[after] <= at)
            return Voltage.FromVolts(volts.Values[after]);
        var (left, right) = (trace.Seconds[after - 1], trace.Seconds[after]);
        return Voltage.FromVolts(volts.Values[after - 1] + ((volts.Values[after] - volts.Values[after - 1]) * (at - left) / (right - left)));
    }
}
