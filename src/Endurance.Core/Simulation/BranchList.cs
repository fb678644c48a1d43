namespace Endurance.Simulation;

/// <summary>The branches that carry current in the present discrete state.</summary>
internal sealed class BranchList
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly Branch[] all;
    private readonly int[] curved;
    private int count;
    private int curvedCount;

    public BranchList(CompiledNetwork network, RunState run)
    {
        this.network = network;
        this.run = run;
        all = new Branch[network.Feeds.Length + network.Batteries.Length + network.Alternators.Length + (2 * network.Chargers.Length)
            + network.Loads.Length + network.Coils.Length + network.Fields.Length];
        curved = new int[all.Length];
        FirstBattery = network.Feeds.Length;
        FirstAlternator = FirstBattery + network.Batteries.Length;
        FirstCharger = FirstAlternator + network.Alternators.Length;
        SlotCount = FirstCharger + network.Chargers.Length;
    }

    /// <summary>Feeds, sources and whatever draws, in this order.</summary>
    public Span<Branch> All => all.AsSpan(0, count);

    /// <summary>Indices of those whose law is curved.</summary>
    public ReadOnlySpan<int> Curved => curved.AsSpan(0, curvedCount);

    /// <summary>Slot of the first battery; those of the feeds begin at zero.</summary>
    public int FirstBattery { get; }

    /// <summary>Slot of the first alternator.</summary>
    public int FirstAlternator { get; }

    /// <summary>Slot of the first charger's output.</summary>
    public int FirstCharger { get; }

    /// <summary>Number of currents that are read by others.</summary>
    public int SlotCount { get; }

    /// <summary>Lists again after the discrete state has changed.</summary>
    public void TakeState()
    {
        count = 0;
        ListFeeds();
        ListSources();
        ListChargers();
        var firstDraw = count;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (run.LoadDraws(i))
                ListDraw(network.Loads[i], run.DemandOf(i), firstDraw);
        }

        for (var i = 0; i < network.Coils.Length; i++)
        {
            if (CoilDraw(i) is { } coil)
                ListDraw(coil, coil.Demand, firstDraw);
        }

        for (var i = 0; i < network.Fields.Length; i++)
        {
            if (run.DrawsField(i) && network.Fields[i] is { } field)
                ListDraw(field, field.Demand, firstDraw);
        }

        curvedCount = 0;
        for (var i = 0; i < count; i++)
        {
            if (all[i].IsCurved)
                curved[curvedCount++] = i;
        }
    }

    private void ListFeeds()
    {
        for (var i = 0; i < network.Feeds.Length; i++)
        {
            var feed = network.Feeds[i];
            if (!run.Conducting[i] || !run.Energised[feed.From] || !run.Energised[feed.To])
                continue;
            var kind = run.DiodeShorted[i] ? BranchKind.Conductance : feed.Law switch
            {
                FeedLaw.JunctionDiode => BranchKind.Junction,
                FeedLaw.IdealDiode => BranchKind.IdealDiode,
                _ => BranchKind.Conductance,
            };
            var ohms = run.DiodeShorted[i] ? feed.ConductorResistance + feed.ShortedResistance : feed.SeriesResistance;
            all[count++] = new Branch { Kind = kind, Part = i, From = feed.From, To = feed.To, Return = feed.Ground, Value = 1 / ohms, IsSink = true, Slot = i };
        }
    }

    private void ListSources()
    {
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            if (run.IsJoined(i) && run.Energised[network.Batteries[i].Node])
                all[count++] = Source(BranchKind.Battery, i, network.Batteries[i].Node, FirstBattery + i);
        }

        for (var i = 0; i < network.Alternators.Length; i++)
        {
            if (run.Generates(i))
                all[count++] = Source(BranchKind.Alternator, i, network.Alternators[i].Node, FirstAlternator + i);
        }
    }

    private void ListChargers()
    {
        for (var i = 0; i < network.Chargers.Length; i++)
        {
            if (!run.Charges(i))
                continue;
            all[count++] = Source(BranchKind.ChargerOutput, i, network.Chargers[i].To, FirstCharger + i);
            all[count++] = new Branch { Kind = BranchKind.ChargerInput, Part = i, From = network.Chargers[i].From, To = -1, Return = -1, Slot = -1 };
        }
    }

    private static Branch Source(BranchKind kind, int part, int node, int slot) =>
        new() { Kind = kind, Part = part, From = -1, To = node, Return = -1, Slot = slot };

    /// <summary>Adds to the branch of the same law between the same nodes, or begins it: an iteration then costs by nodes and not by loads.</summary>
    private void ListDraw(CompiledLoad load, CompiledDemand demand, int first)
    {
        if (!run.Energised[load.Node])
            return;
        var (kind, detail) = demand.Law switch
        {
            LoadLaw.Conductance => (BranchKind.Conductance, 0),
            LoadLaw.Power => (BranchKind.Power, demand.Conductors),
            _ => (BranchKind.Current, demand.Knee),
        };
        var canShare = kind != BranchKind.Power || demand.Conductors == 0;
        for (var i = first; canShare && i < count; i++)
        {
            if (all[i].Kind != kind || all[i].From != load.Node || all[i].To != load.Ground || all[i].Detail != detail)
                continue;
            all[i].Value += demand.BusValue;
            return;
        }

        all[count++] = new Branch { Kind = kind, From = load.Node, To = load.Ground, Return = -1, Value = demand.BusValue, Detail = detail, IsSink = true, Slot = -1 };
    }

    /// <summary>What a coil draws by now; <see langword="null"/>: nothing.</summary>
    private CompiledLoad? CoilDraw(int coil)
    {
        var compiled = network.Coils[coil];
        if (!run.IsEnergised(compiled))
            return null;
        return run.CoilPulledIn[coil] ? compiled.Holding : compiled.PullingIn ?? compiled.Holding;
    }
}
