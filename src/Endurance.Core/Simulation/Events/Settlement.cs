namespace Endurance.Simulation.Events;

/// <summary>Works through everything that is due at one instant, in the fixed order, solving the network after each change.</summary>
/// <remarks>Order: exhaustion and battery protection, trips, contactors and chargers, load drops, timed steps, waiting steps, restarts; then
/// crossings are noted. Ends when nothing changes.</remarks>
internal sealed class Settlement
{
    /// <summary>Rounds at one instant; what can follow from one another at once is a handful, and each part of an aircraft only once.</summary>
    private const int MostRounds = 100;

    /// <summary>Seconds within which a due time counts as reached.</summary>
    public const double TimeBand = 1e-9;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly RunSystem system;
    private readonly OperatingPointSolver solver;
    private readonly GuardSet guards;
    private readonly Watches watches;
    private readonly Journal journal;
    private readonly Actions actions;
    private readonly BatteryEvents batteries;
    private readonly BusDeaths deaths;
    private readonly LoadEvents loads;
    private readonly SwitchingEvents switching;
    private readonly Heats heats;
    private readonly List<string> changed = [];
    private double instant = double.NaN;
    private int rounds;

    public Settlement(
        CompiledNetwork network, RunState run, RunSystem system, OperatingPointSolver solver, GuardSet guards, Heats heats, Watches watches,
        Journal journal)
    {
        this.network = network;
        this.run = run;
        this.system = system;
        this.solver = solver;
        this.guards = guards;
        this.watches = watches;
        this.journal = journal;
        this.heats = heats;
        deaths = new BusDeaths(network, run);
        loads = new LoadEvents(network, run, solver, watches, journal, deaths);
        switching = new SwitchingEvents(network, run, solver, guards, heats, journal);
        actions = new Actions(network, run, watches, journal, loads);
        batteries = new BatteryEvents(network, run, guards, journal);
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
            run.BatterySegment[i] = network.Batteries[i].SegmentAt(y[slot]);
            if (y[slot] <= 0)
                batteries.Exhaust(0, i, y);
        }

        Refresh(LossReason.NeverFed);
        if (system.TrySolve(y))
            heats.StartSteady();
        CarryOut(0, timed: true);
        Settle(0, y);
    }

    /// <remarks>Where no step forward has an operating point it is called again at the same instant, whose rounds are counted on.</remarks>
    /// <exception cref="BrokenOffException">Parts switched each other a hundred times at one instant.</exception>
    public void Settle(double t, double[] y)
    {
        if (t != instant)
        {
            changed.Clear();
            rounds = 0;
            instant = t;
        }

        for (var first = t > 0; rounds < MostRounds; rounds++)
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
            if (ChangeBatteries(t, y) || Switch(t) || CarryOut(t, timed: true) || WarnAndCarryOut(t) || StartUp(t) || NoteCrossings(t))
            {
                continue;
            }

            batteries.AdjustModes(y);
            system.ForgetSolution();
            guards.Arm();
            return;
        }

        throw new BrokenOffException(BreakOff.OfChatter([.. changed.TakeLast(12).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)], t));
    }

    /// <summary>Moves a battery to the branch of its laws that holds from here on; nothing else may be due.</summary>
    public void PassKnot(Guard guard)
    {
        batteries.Move(guard);
        system.ForgetSolution();
        guards.ArmBatteries();
    }

    /// <summary>No operating point exists: drops the loads with the highest minimum on the buses that were falling away.</summary>
    public void Collapse(double t)
    {
        var victims = CollapseVictims.Of(network, run, solver);
        if (victims.Length == 0 && !switching.StopChargers(t, changed))
            throw new UnsolvedNetworkException(network.NodeNames[solver.Equations.WorstBus()], solver.Equations.WorstResidual());
        var buses = victims.Select(load => network.Loads[load].Node).Distinct().Order().ToArray();
        foreach (var bus in buses)
            journal.Note(t, EventKind.VoltageCollapse, network.NodeNames[bus], $"voltage collapse on {network.NodeNames[bus]}");
        foreach (var load in victims)
        {
            changed.Add(network.Loads[load].Name);
            loads.Drop(t, load, LossReason.VoltageCollapse);
        }

        foreach (var bus in buses.Where(bus => bus < network.BusCount && network.Cutoffs[bus] > 0 && !watches.BusBelow[bus]))
            CrossCutoff(t, bus);
        Refresh(LossReason.VoltageCollapse);
    }

    private bool ChangeBatteries(double t, double[] y) => batteries.Change(t, y, changed) is { } cause && Refresh(cause);

    private bool Switch(double t) =>
        Trip(t)
        || (switching.MoveContactors(t, changed) && Refresh(LossReason.FeedOpened))
        || (switching.SwitchChargers(t, changed) && Refresh(LossReason.BusDead))
        || (loads.DropLow(t, changed) && Refresh(LossReason.BusDead));

    /// <summary>An alternator that its relay takes off opens no feed: what it alone fed is on a dead bus, as where it fails.</summary>
    private bool Trip(double t)
    {
        var opened = switching.Trip(t, changed);
        var takenOff = switching.TakeOff(t, changed);
        return (opened || takenOff) && Refresh(opened ? LossReason.FeedOpened : LossReason.BusDead);
    }

    private bool StartUp(double t) =>
        (loads.Restart(t, changed) | loads.EndInrush(t, changed)) && Refresh(LossReason.BusDead);

    /// <summary>Warnings that are due come on, and steps that wait for a bus or a warning are carried out.</summary>
    private bool WarnAndCarryOut(double t)
    {
        for (var i = 0; i < watches.Warnings.Length; i++)
        {
            var warning = watches.Warnings[i];
            if (warning.IsSilent || warning.Due > t + TimeBand)
                continue;
            warning.ComeOn(t);
            journal.Note(t, EventKind.Warning, warning.Name, $"{warning.Name} on");
            foreach (var step in watches.Steps.Where(step => step.Warning == i))
                step.Due = t + step.Hold;
        }

        return CarryOut(t, timed: false);
    }

    private bool CarryOut(double t, bool timed)
    {
        var any = false;
        var opens = false;
        foreach (var step in watches.Steps)
        {
            if (step.IsTimed != timed || !step.IsDueAt(t + TimeBand))
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
                    loads.CrossJudgement(t, guard.Index);
                    break;
                case GuardKind.BusCutoff:
                    CrossCutoff(t, guard.Index);
                    break;
                case GuardKind.StepThreshold:
                    watches.Steps[guard.Index].Cross(t);
                    due |= watches.Steps[guard.Index].IsDueAt(t + TimeBand);
                    break;
                case GuardKind.WarningThreshold:
                    watches.Warnings[guard.Index].Cross(t);
                    due |= watches.Warnings[guard.Index].Due <= t + TimeBand;
                    break;
            }
        }

        // Last, so that what a load lacks at its own bus is what it is lost by, in whatever order the loads stand.
        return loads.FollowNeeds(t, changed) || due;
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
        deaths.Note(cause);
        solver.StartCold();
        return true;
    }
}
