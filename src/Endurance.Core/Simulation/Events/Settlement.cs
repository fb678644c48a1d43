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
        actions = new Actions(run, watches, journal);
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
            run.BatterySegment[i] = network.Batteries[i].SegmentAt(y[i], rising: false);
            if (y[i] <= 0)
                Exhaust(0, i, y);
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

            AdjustBatteryModes(y);
            guards.Arm();
            return;
        }

        throw new ChatteringException(string.Join(", ", changed.TakeLast(12).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)), t / 60);
    }

    /// <summary>No operating point exists: drops the loads with the highest minimum on the buses that were falling away.</summary>
    public void Collapse(double t)
    {
        var highest = HighestMinimum(anywhere: false);
        var anywhere = double.IsNegativeInfinity(highest);
        if (anywhere)
            highest = HighestMinimum(anywhere: true);
        if (double.IsNegativeInfinity(highest))
            throw new UnsolvedNetworkException(network.BusNames[solver.Equations.WorstBus()], solver.Equations.WorstResidual());
        var buses = new SortedSet<int>();
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (Collapses(i, anywhere) && network.Loads[i].Minimum >= highest)
                buses.Add(network.Loads[i].Node);
        }

        foreach (var bus in buses)
            journal.Note(t, EventKind.VoltageCollapse, network.BusNames[bus], $"voltage collapse on {network.BusNames[bus]}");
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (Collapses(i, anywhere) && network.Loads[i].Minimum >= highest)
                Drop(t, i, LossReason.VoltageCollapse);
        }

        foreach (var bus in buses.Where(bus => network.Cutoffs[bus] > 0 && !watches.BusBelow[bus]))
        {
            watches.BusBelow[bus] = true;
            journal.BusFell(t, bus);
        }

        Refresh(LossReason.VoltageCollapse);
    }

    private double HighestMinimum(bool anywhere)
    {
        var highest = double.NegativeInfinity;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (Collapses(i, anywhere))
                highest = Math.Max(highest, network.Loads[i].Minimum);
        }

        return highest;
    }

    private bool Collapses(int load, bool anywhere) =>
        run.LoadDraws(load) && (anywhere ? network.Loads[load].Law == LoadLaw.Power : solver.CollapsedBuses[network.Loads[load].Node]);

    private bool ChangeBatteries(double t, double[] y)
    {
        var any = false;
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            if (run.CanSupply(i) && y[i] <= 0 && (y[i] < 0 || solver.Equations.BatteryAmperes[i] > GuardSet.ZeroBand))
            {
                Exhaust(t, i, y);
                any = true;
            }
            else if (run.BatteryExhausted[i] && y[i] > GuardSet.RevivedCharge)
            {
                run.BatteryExhausted[i] = false;
                journal.Note(t, EventKind.BatteryRevived, network.Batteries[i].Name, $"{network.Batteries[i].Name} can supply again");
                any = true;
            }
        }

        return any && Refresh(LossReason.BusDead);
    }

    private void Exhaust(double t, int battery, double[] y)
    {
        y[battery] = 0;
        run.BatteryExhausted[battery] = true;
        run.BatteryModes[battery] = BatteryMode.DischargingSlowly;
        journal.BatteryExhausted(t, battery);
        changed.Add(network.Batteries[battery].Name);
    }

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

    /// <summary>Moves every battery to the segment and branch of its laws that holds from here on; the network does not feel it.</summary>
    private void AdjustBatteryModes(double[] y)
    {
        foreach (var guard in guards.All)
        {
            if (guard.Kind > GuardKind.BatteryCurrentAbove)
                return;
            while (guards.IsDue(guard, y) && MoveBattery(guard))
            {
                // a battery may have several knots to pass after a jump
            }
        }
    }

    private bool MoveBattery(Guard guard)
    {
        var i = guard.Index;
        switch (guard.Kind)
        {
            case GuardKind.BatteryKnotBelow:
                run.BatterySegment[i]--;
                return true;
            case GuardKind.BatteryKnotAbove:
                run.BatterySegment[i]++;
                return true;
            case GuardKind.BatteryFull:
                run.BatteryModes[i] = BatteryMode.Full;
                return true;
            case GuardKind.BatteryCurrentBelow:
                run.BatteryModes[i] = run.BatteryModes[i] == BatteryMode.DischargingFast ? BatteryMode.DischargingSlowly : BatteryMode.Charging;
                return true;
            case GuardKind.BatteryCurrentAbove:
                run.BatteryModes[i] = run.BatteryModes[i] == BatteryMode.DischargingSlowly ? BatteryMode.DischargingFast : BatteryMode.DischargingSlowly;
                return true;
            default:
                return false;
        }
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
