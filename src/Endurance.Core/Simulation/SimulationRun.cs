using Endurance.Numerics;
using Endurance.Scenarios;
using Endurance.Simulation.Events;

namespace Endurance.Simulation;

/// <summary>One run in progress: step, locate, settle, record.</summary>
internal sealed class SimulationRun
{
    /// <summary>Seconds of the first step tried.</summary>
    private const double FirstStep = 60;

    /// <summary>Seconds; when a step this short still has no operating point at its end, the voltage collapses now.</summary>
    private const double CollapseStep = 1e-4;

    /// <summary>Seconds; the shortest step that a near knot asks for.</summary>
    private const double ShortestKnotStep = 1;

    /// <summary>Tolerance above which the pair of lower order gets there with fewer solves.</summary>
    private const double FewStagesAbove = 3e-6;

    /// <summary>Steps that no case of minutes and hours needs.</summary>
    private const int MostSteps = 300_000;

    /// <summary>Newton iterations that no case needs: shipped ones take up to some thousand, one that switches every second for two hours takes twenty thousand.</summary>
    private const int MostIterations = 5_000_000;

    private const double Safety = 0.9;
    private const double LargestGrowth = 5;
    private const double LargestCut = 0.2;

    /// <summary>Share of a step to try past a knot, where the slopes of the tables are others; found by trying: fewest solves.</summary>
    private const double AfterKnot = 0.8;

    private readonly CompiledNetwork network;
    private readonly SimulationOptions options;
    private readonly RunState run;
    private readonly Watches watches;
    private readonly RunClock clock;
    private readonly Journal journal;
    private readonly StateLayout layout;
    private readonly OperatingPointSolver solver;
    private readonly RunSystem system;
    private readonly Heats heats;
    private readonly GuardSet guards;
    private readonly RungeKutta method;
    private readonly RungeKuttaPair pair;
    private readonly double longestStep;
    private readonly EventLocator locator;
    private readonly Settlement settlement;
    private readonly Recorder recorder;
    private readonly TraceRecorder? trace;
    private readonly RequirementWatch? decided;
    private readonly double horizon;
    private readonly double[] y;
    private readonly double[] start;
    private readonly double[] sample;
    private readonly double[] keptVolts;
    private double t;
    private double suggested = FirstStep;
    private double nextSample;
    private bool hasBegun;
    private int accepted;
    private int rejected;

    public SimulationRun(Scenario scenario, CompiledNetwork network, FailureCase failureCase, SimulationOptions options)
    {
        this.network = network;
        this.options = options;
        horizon = scenario.Horizon.Seconds;
        run = new RunState(network, scenario);
        watches = new Watches(network, TimelineCompiler.Compile(scenario, failureCase), TimelineCompiler.CompileWarnings(scenario));
        clock = new RunClock(network, run, watches, horizon);
        journal = new Journal(network);
        layout = new StateLayout(network);
        solver = new OperatingPointSolver(network, run, options.Tolerance);
        pair = options.Tolerance < FewStagesAbove ? RungeKuttaPair.DormandPrince : RungeKuttaPair.BogackiShampine;
        heats = new Heats(network, solver.Equations, pair.Nodes);
        guards = new GuardSet(network, run, watches, solver, heats);
        system = new RunSystem(network, run, layout, solver, guards, heats);
        method = new RungeKutta(pair, layout.Size, layout.Scales);
        longestStep = pair.StableStep * network.Batteries.Select(battery => battery.ShortestTime).DefaultIfEmpty(double.PositiveInfinity).Min();
        locator = new EventLocator(method, system, guards, heats, layout.Size);
        settlement = new Settlement(network, run, system, solver, guards, heats, watches, journal);
        recorder = new Recorder(network, run, solver, layout, watches, journal);
        trace = options.SampleInterval is { } interval ? new TraceRecorder(network, solver, interval.Seconds) : null;
        decided = options.EndsWhenDecided ? new RequirementWatch(scenario, failureCase, journal) : null;
        y = new double[layout.Size];
        foreach (var battery in network.Batteries)
            battery.SetInitial(y);
        start = [.. y];
        sample = new double[layout.Size];
        keptVolts = new double[network.NodeCount];
    }

    public bool IsFinished => t >= horizon || decided?.IsDecided(t) == true || (!run.AnySource() && !clock.IsAnythingToCome(y));

    /// <summary>Seconds from zero.</summary>
    public double Now => t;

    /// <summary>Energy out of the sources so far, less what charged them.</summary>
    public double SourceJoules => y[layout.SourceEnergy];

    public void Begin()
    {
        settlement.Begin(y);
        recorder.Begin(y);
        hasBegun = true;
        trace?.Add(0, y);
        nextSample = trace?.Interval ?? double.PositiveInfinity;
        settlement.BeforeChange = Observe;
        Restart();
    }

    /// <summary>One step of integration, and whatever comes due at its end.</summary>
    /// <exception cref="BrokenOffException">The case cannot be computed further.</exception>
    /// <exception cref="UnsolvedNetworkException">The solver did not reach its accuracy.</exception>
    public void Advance()
    {
        if (solver.Iterations > MostIterations)
            throw new BrokenOffException(BreakOff.OfEffort(network.NodeNames[solver.Equations.WorstBus()], t, MostIterations));
        var limit = clock.NextDue(t) - t;
        var h = Math.Min(Math.Min(suggested, longestStep), Math.Min(limit, ToNextKnot()));
        system.BeginTry();
        var error = method.TryStep(system, t, y, h, options.Tolerance) * (system.IsKinked ? pair.KinkFactor : 1);
        if (!(error <= 1))
        {
            Reject(h, error);
            return;
        }

        var isDue = heats.EndStep(h);
        if (heats.FinerStep is { } finer)
        {
            rejected++;
            suggested = finer;
            return;
        }

        if (++accepted + rejected > MostSteps)
            throw new BrokenOffException(BreakOff.OfSteps(FastestBattery(), t, MostSteps));
        var grown = h * Math.Clamp(Safety * Math.Pow(Math.Max(error, 1e-10), -1.0 / pair.Order), LargestCut, LargestGrowth);
        suggested = h < suggested ? Math.Max(suggested, grown) : grown;
        if (isDue)
            system.StagesDue |= 1;
        var theta = system.StagesDue == 0 ? double.NaN : locator.Locate(h, system.StagesDue);
        var last = double.IsNaN(theta) ? 1 : theta;
        Sample(h, last);
        method.Interpolate(last, y);
        heats.Commit(last * h);
        var arrived = double.IsNaN(theta) && h >= limit;
        t = arrived ? t + limit : t + (last * h);
        if (!arrived && double.IsNaN(theta))
            Continue();
        else if (!arrived && locator.DueAlone is { IsOfBatteryAlone: true } guard && clock.NextDue(t) > t + Settlement.TimeBand)
            PassKnot(guard);
        else
            SettleNow();
    }

    public SimulationResult Result()
    {
        if (t < horizon)
        {
            recorder.Observe(t, y);
            trace?.Add(horizon, y);
        }

        journal.Note(t, EventKind.End, "", t >= horizon || decided?.IsDecided(t) == true ? "end of the time simulated" : "no source left");
        var statistics = new SimulationStatistics(accepted, rejected, solver.Solves, solver.Iterations);
        return recorder.Result(y, t, start, statistics, trace?.ToTrace(), RunFindings.Of(network, watches, solver.Equations));
    }

    /// <summary>What is known up to the instant at which the case could not be computed further.</summary>
    public SimulationResult BrokenOff(BreakOff breakOff)
    {
        var isSolved = breakOff.Cause != BreakOffCause.Unsolved;
        if (!hasBegun && isSolved && system.TrySolve(y))
        {
            hasBegun = true;
            recorder.Begin(y);
            trace?.Add(0, y);
        }

        var statistics = new SimulationStatistics(accepted, rejected, solver.Solves, solver.Iterations);
        var result = recorder.Result(y, t, start, statistics, trace?.ToTrace(), isSolved ? RunFindings.OfDiodes(solver.Equations) : []);
        return result with
        {
            BreakOff = breakOff,
            HasBegun = hasBegun,
            Events = [.. result.Events, new TimedEvent(breakOff.Time, EventKind.End, "", breakOff.Words)],
        };
    }

    private void Continue()
    {
        method.Accept();
        recorder.Observe(t, y);
        StartStep();
    }

    /// <summary>A battery changes to another branch of its laws, and nothing else happens.</summary>
    private void PassKnot(Guard guard)
    {
        settlement.PassKnot(guard);
        suggested *= AfterKnot;
        Restart();
        Observe();
    }

    private void SettleNow()
    {
        settlement.Settle(t, y);
        Observe();
        Restart();
    }

    /// <summary>Prepares the first rates of the next step after a jump.</summary>
    private void Restart()
    {
        system.ForgetPast();
        while (!system.TryEvaluate(t, y, method.FirstRates))
        {
            // The solution ended where a battery passed to the next line of its tables.
            settlement.Collapse(t);
            settlement.Settle(t, y);
            Observe();
        }

        StartStep();
    }

    private void StartStep()
    {
        system.StartStep();
        heats.StartStep();
        locator.StartFrom(y);
    }

    private void Observe()
    {
        recorder.Observe(t, y);
        trace?.Add(t, y);
    }

    private void Reject(double h, double error)
    {
        rejected++;
        suggested = h * (double.IsFinite(error) ? Math.Max(LargestCut, Safety * Math.Pow(error, -1.0 / pair.Order)) : 0.5);
        if (double.IsFinite(error) || h > CollapseStep)
            return;
        settlement.Collapse(t);
        suggested = 1;
        SettleNow();
    }

    /// <summary>Seconds until a battery has passed its next knot, by its present rate: further on, its line would be an extrapolation.</summary>
    private double ToNextKnot()
    {
        const double beyond = 1.05;
        var shortest = double.PositiveInfinity;
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var slot = network.Batteries[i].Slot;
            var rate = method.FirstRates[slot];
            if (rate == 0)
                continue;
            var knots = network.Batteries[i].Knots;
            var next = knots[run.BatterySegment[i] + (rate > 0 ? 1 : 0)];
            shortest = Math.Min(shortest, Math.Max((next - y[slot]) / rate * beyond, ShortestKnotStep));
        }

        return shortest;
    }

    /// <summary>The battery whose components change fastest, each against its scale.</summary>
    private string FastestBattery() => network.Batteries
        .MaxBy(battery => Enumerable.Range(battery.Slot, battery.StateCount).Max(slot => Math.Abs(method.FirstRates[slot]) / layout.Scales[slot]))?.Name ?? "The network";

    /// <summary>Records the trace inside the step just taken, and leaves the solver as it was.</summary>
    private void Sample(double h, double last)
    {
        if (trace is null || t + (last * h) <= nextSample)
            return;
        solver.Volts.CopyTo(keptVolts, 0);
        for (; nextSample < t + (last * h); nextSample += trace.Interval)
        {
            if (nextSample <= t)
                continue;
            method.Interpolate((nextSample - t) / h, sample);
            if (system.TrySolve(sample))
                trace.Add(nextSample, sample);
        }

        keptVolts.CopyTo(solver.Volts, 0);
        method.Interpolate(last, sample);
        system.TrySolve(sample);
    }
}
