namespace Endurance.Simulation.Events;

/// <summary>What loads do of themselves: stop, start up, draw their inrush, and count as lost.</summary>
internal sealed class LoadEvents
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly OperatingPointSolver solver;
    private readonly Watches watches;
    private readonly Journal journal;
    private readonly BusDeaths deaths;

    public LoadEvents(CompiledNetwork network, RunState run, OperatingPointSolver solver, Watches watches, Journal journal, BusDeaths deaths)
    {
        this.network = network;
        this.run = run;
        this.solver = solver;
        this.watches = watches;
        this.journal = journal;
        this.deaths = deaths;
    }

    /// <summary>Drops together all loads that are below their minimum; <see langword="true"/> when there were any.</summary>
    /// <remarks>What is switched on behind its own open breaker or fuse is lost as well, which the network does not feel.</remarks>
    public bool DropLow(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            var load = network.Loads[i];
            if (run.LoadConnected[i] && !run.LoadProtected[i])
                Lose(t, i, LossReason.FeedOpened);
            if (!load.HasMinimum || !run.LoadDraws(i) || solver.Equations.LoadVolts(i) >= run.DemandOf(i).AtBus(load.Minimum))
                continue;
            Drop(t, i, deaths[load.Node]);
            changed.Add(load.Name);
            any = true;
        }

        return any;
    }

    public void Drop(double t, int load, LossReason reason)
    {
        run.LoadDropped[load] = true;
        run.InrushUntil[load] = double.NaN;
        Lose(t, load, reason);
    }

    public void Lose(double t, int load, LossReason reason)
    {
        if (watches.LoadLost[load])
            return;
        watches.LoadLost[load] = true;
        journal.LoadLost(t, load, reason);
    }

    /// <summary>Runs the start-up times of dropped loads; <see langword="true"/> when any came back.</summary>
    public bool Restart(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            var load = network.Loads[i];
            if (!load.CanRestart || !run.LoadDropped[i] || !run.LoadProtected[i])
                continue;
            var volts = solver.Equations.LoadVolts(i);
            if (double.IsNaN(watches.RestartDue[i]) && volts >= load.Restart)
                watches.RestartDue[i] = t + load.StartUp;
            else if (volts < load.Restart - GuardSet.RestartSag)
                watches.RestartDue[i] = double.NaN;
            if (!(watches.RestartDue[i] <= t + Settlement.TimeBand))
                continue;
            watches.RestartDue[i] = double.NaN;
            run.LoadDropped[i] = false;
            StartInrush(t, i);
            ComeBack(t, i);
            changed.Add(load.Name);
            any = true;
        }

        return any;
    }

    public void StartInrush(double t, int load)
    {
        if (network.Loads[load].Inrush is not null)
            run.InrushUntil[load] = t + network.Loads[load].InrushLasts;
    }

    /// <summary>Ends the inrush of loads that have started; <see langword="true"/> when any did.</summary>
    public bool EndInrush(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < run.InrushUntil.Length; i++)
        {
            if (!(run.InrushUntil[i] <= t + Settlement.TimeBand))
                continue;
            run.InrushUntil[i] = double.NaN;
            changed.Add(network.Loads[i].Name);
            any = true;
        }

        return any;
    }

    /// <summary>A load without a minimum has crossed the voltage it is judged at.</summary>
    public void CrossJudgement(double t, int load)
    {
        if (watches.LoadLost[load])
            ComeBack(t, load);
        else
            Lose(t, load, deaths[network.Loads[load].Node]);
    }

    /// <summary>A load is of no use without the loads it needs: it is lost and comes back with them; <see langword="true"/> when any came back.</summary>
    /// <remarks>Those that come back go first, and alone, so that nothing is lost for want of a load that is just coming back.</remarks>
    public bool FollowNeeds(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (!watches.LacksNeed[i] || !run.LoadDraws(i) || MissingNeed(i) >= 0)
                continue;
            watches.LacksNeed[i] = false;
            if (solver.Equations.LoadVolts(i) < run.DemandOf(i).AtBus(network.Loads[i].JudgedAt))
                continue; // lost by its own voltage by now, and back with that
            ComeBack(t, i);
            changed.Add(network.Loads[i].Name);
            any = true;
        }

        while (!any && LoseForNeeds(t, changed))
        {
            // a chain of needs is followed to its end before anything else of this instant, in whatever order its loads stand
        }

        return any;
    }

    /// <summary>A lost load has its volts again: it is back, or still lost for want of a load it needs.</summary>
    private void ComeBack(double t, int load)
    {
        watches.LacksNeed[load] = MissingNeed(load) >= 0;
        if (watches.LacksNeed[load])
            return;
        watches.LoadLost[load] = false;
        journal.LoadBack(t, load);
    }

    private bool LoseForNeeds(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (watches.LoadLost[i] || !run.LoadDraws(i) || MissingNeed(i) is not (>= 0 and var missing))
                continue;
            watches.LacksNeed[i] = true;
            Lose(t, i, journal.LoadReason[missing] ?? LossReason.FeedOpened);
            changed.Add(network.Loads[i].Name);
            any = true;
        }

        return any;
    }

    /// <summary>The first load it needs that is not there; -1 when none is missing.</summary>
    private int MissingNeed(int load)
    {
        foreach (var need in network.Loads[load].Needs)
        {
            if (!run.LoadConnected[need] || watches.LoadLost[need])
                return need;
        }

        return -1;
    }
}
