using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.Wiring;

/// <summary>The worst currents of feeds and loads over every failure case and the aircraft as drawn.</summary>
public static class BranchCurrents
{
    /// <summary>A current that lasts no longer at a time counts as intermittent; from memory, unverified.</summary>
    public static readonly Duration Intermittent = Duration.FromMinutes(2);

    private const int MostSamples = 2000;

    /// <summary>Amperes that count as none: what the solver lets every bus leak, and what a balance may be off by.</summary>
    private const double Nothing = 1e-6;

    private static readonly Duration ShortestSample = Duration.FromSeconds(20);

    /// <summary>By name of feed or load, and the cases of which only the currents before their break-off count.</summary>
    /// <exception cref="BrokenOffException">Not even the start of any case can be computed.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static (ImmutableDictionary<string, BranchCurrent> Currents, ImmutableArray<LeftOut> LeftOut) Of(Scenario scenario, CancellationToken cancellation)
    {
        var atFullDuty = scenario with { Loads = [.. scenario.Loads.Select(load => load with { Duty = 1 })] };
        var (steady, leftOut) = Traces(scenario, cancellation);
        var (full, leftOutAtFull) = Traces(atFullDuty, cancellation);
        var onlyAtFull = leftOutAtFull.ExceptBy(leftOut.Select(Told), Told).Select(one => one with { What = one.What + " with every load at its full draw" });
        var worst = ImmutableDictionary.CreateBuilder<string, BranchCurrent>(StringComparer.Ordinal);
        foreach (var feed in scenario.Feeds.Index())
            worst[feed.Item.Name] = Worst(steady, full, trace => trace.FeedAmperes[feed.Index]);
        var voltages = new BusVoltages(scenario);
        foreach (var load in scenario.Loads.Index())
            worst[load.Item.Name] = OfLoad(load.Item, Worst(steady, full, trace => trace.LoadAmperes[load.Index]), voltages.Of(load.Item.Bus));
        return (worst.ToImmutable(), [.. leftOut, .. onlyAtFull]);
    }

    private static (string What, string Words) Told(LeftOut one) => (one.What, one.BreakOff.Words);

    /// <summary>Of the aircraft as drawn and of every case; of those that cannot be computed to their end, up to there.</summary>
    private static (ImmutableArray<Trace> Traces, List<LeftOut> LeftOut) Traces(Scenario scenario, CancellationToken cancellation)
    {
        var spread = scenario.Horizon / MostSamples;
        var options = new SimulationOptions { SampleInterval = spread > ShortestSample ? spread : ShortestSample };
        var simulator = new Simulator(scenario);
        FailureCase asDrawn = new() { Name = "as drawn" };
        var traces = ImmutableArray.CreateBuilder<Trace>();
        var leftOut = new List<LeftOut>();
        foreach (var failureCase in scenario.FailureCases.Prepend(asDrawn))
        {
            var run = simulator.RunUntilBreakOff(failureCase, options, cancellation);
            if (run.BreakOff is { } breakOff)
                leftOut.Add(new LeftOut(ReferenceEquals(failureCase, asDrawn) ? "the aircraft as drawn" : LeftOut.Case(failureCase.Name), breakOff));
            if (!run.Trace!.Seconds.IsEmpty)
                traces.Add(run.Trace);
        }

        return traces.Count > 0 ? (traces.ToImmutable(), leftOut) : throw new BrokenOffException(leftOut[^1].BreakOff, scenario.FailureCases is [.., var last] ? last.Name : "");
    }

    private static BranchCurrent Worst(ImmutableArray<Trace> steady, ImmutableArray<Trace> full, Func<Trace, TraceColumn> column)
    {
        var held = steady.Max(trace => LongestHeld(trace.Seconds, column(trace).Values));
        var highest = full.Max(trace => column(trace).Values.Max(Math.Abs));
        if (Math.Max(held, highest) < Nothing)
            return new(Current.Zero, Current.Zero, CurrentSource.Simulated);
        return new(Current.FromAmperes(held), Current.FromAmperes(Math.Max(held, highest)), CurrentSource.Simulated);
    }

    /// <summary>What no case connects is taken at its own figure; a stated peak or inrush counts in either case.</summary>
    private static BranchCurrent OfLoad(Load load, BranchCurrent simulated, Voltage nominal)
    {
        var stated = load.CurrentAt(nominal);
        var own = simulated.Short > Current.Zero ? simulated : new BranchCurrent(stated * load.Duty, stated, CurrentSource.Nominal);
        foreach (var brief in new[] { load.Peak, load.Inrush?.Current })
        {
            if (brief is { } amperes)
                own = own.Or(own with { Steady = Current.Zero, Short = amperes });
        }

        return own;
    }

    /// <summary>The largest magnitude that holds, without a dip, for as long as <see cref="Intermittent"/>.</summary>
    private static double LongestHeld(ImmutableArray<double> seconds, ImmutableArray<double> amperes)
    {
        var span = Math.Min(Intermittent.Seconds, seconds[^1] - seconds[0]);
        var best = 0.0;
        for (var first = 0; first < seconds.Length && seconds[first] + span <= seconds[^1]; first++)
        {
            var least = Math.Abs(amperes[first]);
            for (var i = first + 1; i < seconds.Length && seconds[i] <= seconds[first] + span && least > best; i++)
                least = Math.Min(least, Math.Abs(amperes[i]));
            best = Math.Max(best, least);
        }

        return best;
    }
}
