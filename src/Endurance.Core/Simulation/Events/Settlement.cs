namespace Endurance.Simulation.Events;

/// <summary>Works through everything that is due at one instant, in the fixed order, solving the network after each change.</summary>
/// <remarks>Order: exhaustion, load drops, timed steps, waiting steps, restarts; then crossings are noted. Ends when nothing changes.</remarks>
internal sealed class Settlement
{
    private const int MostRounds = 100;

    /// <summary>Seconds within which a due time counts as reached.</summary>
    private const double TimeBand = 1e-9;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly RunSystem system;
    private readonly OperatingPointSolver solver;
    private readonly GuardSet guards;
    private readonly Watches watches;
    private readonly Journal journal;
    private readonly Actions actions;
    private readonly BatteryEvents batteries;
    private readonly LossReason[] busDeath;
    private readonly List<string> changed = [];

    public Settlement(
        CompiledNetwork network, RunState run, RunSystem system, OperatingPointSolver solver, GuardSet guards, Watches watches, Journal journal)
    {
        this.network = network;
        this.run = run;
        this.system = system;
        this.solver = solver;
        this.guards = guards;
        this.watches = watches;
        this.journal = journal;
        actions = new Actions(network, run, watches, journal);
        batteries = new BatteryEvents(network, run, solver, guards, journal);
        busDeath = new LossReason[network.BusCount];
        Array.Fill(busDeath, LossReason.NeverFed);
        NoteDeaths(LossReason.NeverFed);
    }

    /// <summary>Called at the first solve of an instant, before anything that is due has changed the network.</summary>
    public Action? BeforeChange { get; set; }

    /// <summary>Carries out the steps at time zero, which make the state that a run starts from.</summary>
    public void Begin(double[] y)
    {
        for (var i = 0; i < network.Loads.Length; i++)
            journal.LoadEverConnected[i] = run.LoadConnected[i];
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var slot = network.Batteries[i].Slot;
            run.BatterySegment[i] = network.Batteries[i].SegmentAt(y[slot], rising: false);
            if (y[slot] <= 0)
                batteries.Exhaust(0, i, y);
        }

        Refresh(LossReason.NeverFed);
        CarryOut(0, waiting: false);
        Settle(0, y);
    }

    /// <exception cref="ChatteringException">Parts switched each other a hundred times at one instant.</exception>
    public void Settle(double t, double[] y)
    {
        changed.Clear();
        var first = t > 0;
        for (var round = 0; round < MostRounds; round++)
        {
            if (!system.TrySolve(y))
            {
                Collapse(t);
                first = false;
                continue;
            }

            if (first)
                BeforeChange?.Invoke();
            first = false;
            if (ChangeBatteries(t, y) || DropLoads(t) || CarryOut(t, waiting: false) || CarryOut(t, waiting: true)
                || Restart(t) || NoteCrossings(t))
            {
                continue;
            }

            batteries.AdjustModes(y);
            guards.Arm();
            return;
        }

        throw new ChatteringException([.. changed.TakeLast(12).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)], t / 60);
    }

    /// <summary>No operating point exists: drops the loads with the highest minimum on the buses that were falling away.</summary>
    public void Collapse(double t)
    {
        var victims = CollapseVictims.Of(network, run, solver);
        foreach (var bus in victims.Select(load => network.Loads[load].Node).Distinct().Order())
            journal.Note(t, EventKind.VoltageCollapse, network.BusNames[bus], $"voltage collapse on {network.BusNames[bus]}");
        foreach (var load in victims)
            Drop(t, load, LossReason.VoltageCollapse);
        foreach (var bus in victims.Select(load => network.Loads[load].Node).Distinct().Order())
        {
            if (network.Cutoffs[bus] > 0 && !watches.BusBelow[bus])
                CrossCutoff(t, bus);
        }

        Refresh(LossReason.VoltageCollapse);
    }

    private bool ChangeBatteries(double t, double[] y) => batteries.Change(t, y, changed) is { } cause && Refresh(cause);

    private bool DropLoads(double t)
    {
        var any = false;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            var load = network.Loads[i];
            if (!load.HasMinimum || !run.LoadDraws(i) || solver.Volts[load.Node] >= load.Minimum)
                continue;
            Drop(t, i, ReasonAt(load.Node));
            any = true;
        }

        return any && Refresh(LossReason.BusDead);
    }

    private LossReason ReasonAt(int bus) => run.Energised[bus] ? LossReason.BelowMinimum : busDeath[bus];

    private void Drop(double t, int load, LossReason reason)
    {
        run.LoadDropped[load] = true;
        watches.RestartDue[load] = double.NaN;
        changed.Add(network.Loads[load].Name);
        if (watches.LoadLost[load])
            return;
        watches.LoadLost[load] = true;
        journal.LoadLost(t, load, reason);
    }

    private bool CarryOut(double t, bool waiting)
    {
        var any = false;
        var opens = false;
        foreach (var step in watches.Steps)
        {
            if (step.WaitsForBus != waiting || !step.IsDueAt(t + TimeBand))
                continue;
            actions.CarryOut(step, t);
            any = true;
            foreach (var action in step.Actions)
            {
                changed.Add(action.Name);
                opens |= action.OpensFeed;
            }
        }

        return any && Refresh(opens ? LossReason.FeedOpened : LossReason.BusDead);
    }

    private bool Restart(double t)
    {
        var any = false;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            var load = network.Loads[i];
            if (!load.CanRestart || !run.LoadConnected[i] || !run.LoadDropped[i])
                continue;
            var volts = solver.Volts[load.Node];
            if (double.IsNaN(watches.RestartDue[i]))
            {
                if (volts >= load.Restart)
                    watches.RestartDue[i] = t + load.StartUp;
            }
            else if (volts < load.Restart - GuardSet.RestartSag)
            {
                watches.RestartDue[i] = double.NaN;
            }

            if (!(watches.RestartDue[i] <= t + TimeBand))
                continue;
            watches.RestartDue[i] = double.NaN;
            run.LoadDropped[i] = false;
            watches.LoadLost[i] = false;
            journal.LoadBack(t, i);
            changed.Add(load.Name);
            any = true;
        }

        return any && Refresh(LossReason.BusDead);
    }

    /// <summary>Notes crossings of thresholds; <see langword="true"/> when a step became due by one at once.</summary>
    private bool NoteCrossings(double t)
    {
        var due = false;
        foreach (var guard in guards.All)
        {
            if (guard.Kind < GuardKind.LoadJudgement || !guards.IsDue(guard, []))
                continue;
            switch (guard.Kind)
            {
                case GuardKind.LoadJudgement:
                    CrossJudgement(t, guard.Index);
                    break;
                case GuardKind.BusCutoff:
                    CrossCutoff(t, guard.Index);
                    break;
                case GuardKind.StepThreshold:
                    watches.Steps[guard.Index].Cross(t);
                    due |= watches.Steps[guard.Index].IsDueAt(t + TimeBand);
                    break;
            }
        }

        return due;
    }

    private void CrossJudgement(double t, int load)
    {
        var lost = watches.LoadLost[load] = !watches.LoadLost[load];
        if (lost)
            journal.LoadLost(t, load, ReasonAt(network.Loads[load].Node));
        else
            journal.LoadBack(t, load);
    }

    private void CrossCutoff(double t, int bus)
    {
        var below = watches.BusBelow[bus] = !watches.BusBelow[bus];
        if (below)
            journal.BusFell(t, bus);
        else
            journal.BusRose(t, bus);
    }

    /// <summary>Always <see langword="true"/>, so that a change can be reported in one expression.</summary>
    private bool Refresh(LossReason cause)
    {
        run.Refresh();
        NoteDeaths(cause);
        solver.StartCold();
        return true;
    }

    /// <summary>Remembers why each bus that has just lost its last source did.</summary>
    private void NoteDeaths(LossReason cause)
    {
        for (var i = 0; i < network.BusCount; i++)
        {
            if (run.Energised[i])
                busDeath[i] = LossReason.BelowMinimum;
            else if (busDeath[i] == LossReason.BelowMinimum)
                busDeath[i] = cause;
        }
    }
}
