namespace Endurance.Simulation;

/// <summary>Kirchhoff's current law at every bus: residual, Jacobian and branch currents at the present voltages.</summary>
internal sealed class NetworkEquations
{
    private const double GroundLeak = 1e-12;

    /// <summary>Watts within which a charger's input counts as settled.</summary>
    private const double ChargerTolerance = 1e-8;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly int n;
    private readonly NodalSystem nodal;
    private readonly NodeLoads loads;
    private readonly FeedBranches feeds;
    private readonly Func<int, double> diodeWatts;

    /// <summary>Siemens of the resistor per watt of a constant-power load at share 0.</summary>
    private double siemensPerWatt;

    public NetworkEquations(CompiledNetwork network, RunState run, double tolerance)
    {
        this.network = network;
        this.run = run;
        n = network.NodeCount;
        Volts = new double[n];
        nodal = new NodalSystem(n);
        BatteryEmf = new double[network.Batteries.Length];
        BatteryResistance = new double[network.Batteries.Length];
        BatteryChargeLimit = new double[network.Batteries.Length];
        BatteryAmperes = new double[network.Batteries.Length];
        AlternatorAmperes = new double[network.Alternators.Length];
        FeedAmperes = new double[network.Feeds.Length];
        loads = new NodeLoads(network, run);
        CoilAmperes = new double[network.Coils.Length];
        FieldAmperes = new double[network.Fields.Length];
        ChargerAmperes = new double[network.Chargers.Length];
        ChargerWatts = new double[network.Chargers.Length];
        feeds = new FeedBranches(network, run, tolerance);
        diodeWatts = DiodeWatts;
        TakeState();
    }

    public double[] Volts { get; }

    /// <summary>Amperes leaving each bus.</summary>
    public double[] Residual => nodal.Residual;

    /// <summary>Row by row, siemens.</summary>
    public double[] Jacobian => nodal.Jacobian;

    public double[] BatteryEmf { get; }

    public double[] BatteryResistance { get; }

    public double[] BatteryChargeLimit { get; }

    /// <summary>Positive when discharging.</summary>
    public double[] BatteryAmperes { get; }

    public double[] AlternatorAmperes { get; }

    public double[] FeedAmperes { get; }

    public double[] CoilAmperes { get; }

    public double[] FieldAmperes { get; }

    /// <summary>At the output.</summary>
    public double[] ChargerAmperes { get; }

    /// <summary>At the input; follows the output by <see cref="MoveChargers"/>.</summary>
    public double[] ChargerWatts { get; }

    /// <summary>Watts into loads, coils and fields.</summary>
    public double DrawnWatts { get; private set; }

    /// <summary>Some constant-power load is at a voltage at which its own conductors cannot carry its power.</summary>
    public bool IsBeyondAnEnd { get; private set; }

    /// <summary>
    /// Share of every constant-power load that draws P/v, 0 to 1; the rest stands as a resistor that draws less than P/v at any
    /// possible voltage. Without that resistor a network of constant-power loads alone would start with nothing flowing, where
    /// diodes and full batteries have no slope and no share of power, however small, could be told from a collapse.
    /// </summary>
    public double PowerShare { get; set; } = 1;

    /// <summary>A junction's heat and temperature drove each other without end.</summary>
    public bool ThermalRunaway { get; set; }

    /// <summary>Highest EMF, set-point or output of a working source; at least 1 V.</summary>
    public double HighestSource => Sources.Highest(network, run, BatteryEmf);

    /// <summary>Every live bus at the highest source: above every solution.</summary>
    public void SetHighStart()
    {
        var high = HighestSource;
        siemensPerWatt = 1 / (high * high);
        for (var i = 0; i < n; i++)
            Volts[i] = run.Energised[i] && i < network.FirstGround ? high : 0;
    }

    /// <summary>Works out again which branches there are, after the discrete state has changed.</summary>
    public void TakeState()
    {
        loads.Sum();
        feeds.TakeState();
        Array.Clear(FeedAmperes);
    }

    /// <summary>Amperes of a load at the present voltages; zero when it does not draw.</summary>
    public double LoadAmperes(int load) => run.LoadDraws(load) && run.Energised[network.Loads[load].Node]
        ? BranchLaw.Load(run.DemandOf(load), LoadVolts(load), 1, 0).Amperes
        : 0;

    /// <summary>Volts between a load's supply and its ground.</summary>
    public double LoadVolts(int load) => VoltsAcross(network.Loads[load]);
    /// <summary>Junction temperature of a feed's diode, kelvin.</summary>
    public double JunctionKelvin(int feed) => feeds.Kelvin(feed);

    /// <summary>Heat in a feed's diode, watts.</summary>
    public double DiodeWatts(int feed)
    {
        var branch = network.Feeds[feed];
        if (!branch.HasDiode || !run.Conducting[feed])
            return 0;
        var amperes = FeedAmperes[feed];
        return amperes * (FeedVolts(branch) - (amperes * branch.ConductorResistance));
    }

    /// <summary>Volts along a feed and its return.</summary>
    public double FeedVolts(CompiledFeed feed) => Volts[feed.From] - Volts[feed.To] - (feed.Ground < 0 ? 0 : Volts[feed.Ground]);

    /// <summary>Sets the input power of every charger to what its output takes; <see langword="true"/> when any moved.</summary>
    public bool MoveChargers()
    {
        var moved = false;
        for (var i = 0; i < ChargerWatts.Length; i++)
        {
            var charger = network.Chargers[i];
            var watts = run.Charges(i) ? Math.Max(0, Volts[charger.To]) * ChargerAmperes[i] / charger.Efficiency : 0;
            moved |= Math.Abs(watts - ChargerWatts[i]) > ChargerTolerance;
            ChargerWatts[i] = watts;
        }

        return moved;
    }

    /// <summary>Whether any junction follows its own heat.</summary>
    public bool HasHeatPaths => feeds.AnyMoves;

    /// <summary>Takes guesses of the junction temperatures that follow their heat, kelvin by feed, to start from.</summary>
    public void StartJunctions(ReadOnlySpan<double> kelvin) => feeds.Start(kelvin);

    /// <summary>Sets junctions to ambient plus their heat times the heat path; <see langword="true"/> when any moved.</summary>
    public bool MoveJunctions() => feeds.Move(diodeWatts);

    /// <summary>Fills residual, Jacobian and branch currents at the present voltages.</summary>
    public void Assemble()
    {
        nodal.Clear();
        for (var i = 0; i < n; i++)
        {
            if (run.Energised[i])
            {
                nodal.Add(i, new(GroundLeak * Volts[i], GroundLeak));
                continue;
            }

            Volts[i] = 0;
            nodal.Pin(i);
        }

        for (var i = network.FirstGround; i < n; i++)
            nodal.Add(i, new(network.GroundSiemens[i - network.FirstGround] * Volts[i], network.GroundSiemens[i - network.FirstGround]));
        IsBeyondAnEnd = false;
        DrawnWatts = 0;
        AddFeeds();
        AddBatteries();
        AddAlternators();
        AddChargers();
        AddLoads();
        for (var i = 0; i < network.Coils.Length; i++)
            CoilAmperes[i] = CoilDraw(i) is { } coil ? AddLoad(coil, coil.Demand) : 0;
        for (var i = 0; i < network.Fields.Length; i++)
            FieldAmperes[i] = run.DrawsField(i) && network.Fields[i] is { } field ? AddLoad(field, field.Demand) : 0;
    }

    /// <summary>What a coil draws by now; <see langword="null"/>: nothing.</summary>
    public CompiledLoad? CoilDraw(int coil)
    {
        var compiled = network.Coils[coil];
        if (!run.IsEnergised(compiled))
            return null;
        return run.CoilPulledIn[coil] ? compiled.Holding : compiled.PullingIn ?? compiled.Holding;
    }

    public int WorstBus() => nodal.Worst();

    public double WorstResidual() => Residual[WorstBus()];

    private void AddFeeds()
    {
        foreach (var i in feeds.Live)
        {
            var feed = network.Feeds[i];
            var point = feeds.Point(i, FeedVolts(feed));
            FeedAmperes[i] = point.Amperes;
            nodal.AddBetween(feed.From, feed.To, point);
            if (feed.Ground >= 0)
                nodal.AddReturn(feed.From, feed.To, feed.Ground, point);
        }
    }

    private void AddBatteries()
    {
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var node = network.Batteries[i].Node;
            BatteryAmperes[i] = 0;
            if (!run.IsJoined(i) || !run.Energised[node])
                continue;
            var point = BranchLaw.Battery(Volts[node], BatteryEmf[i], BatteryResistance[i], BatteryChargeLimit[i], run.BatteryExhausted[i]);
            BatteryAmperes[i] = -point.Amperes;
            nodal.Add(node, point);
        }
    }

    private void AddAlternators()
    {
        for (var i = 0; i < network.Alternators.Length; i++)
        {
            AlternatorAmperes[i] = 0;
            if (!run.Generates(i))
                continue;
            var alternator = network.Alternators[i];
            var point = BranchLaw.Alternator(Volts[alternator.Node], alternator, run.LimitOf(i));
            AlternatorAmperes[i] = -point.Amperes;
            nodal.Add(alternator.Node, point);
        }
    }

    private void AddChargers()
    {
        for (var i = 0; i < network.Chargers.Length; i++)
        {
            var charger = network.Chargers[i];
            ChargerAmperes[i] = 0;
            if (!run.Charges(i))
                continue;
            var output = BranchLaw.Charger(Volts[charger.To], charger);
            ChargerAmperes[i] = output.Amperes;
            nodal.Add(charger.To, new(-output.Amperes, output.Siemens));
            var watts = ChargerWatts[i] * PowerShare;
            nodal.Add(charger.From, BranchLaw.ConstantPower(watts, Volts[charger.From], 0));
            IsBeyondAnEnd |= BranchLaw.IsBeyondTheEnd(watts, Volts[charger.From], 0);
        }
    }

    private void AddLoads()
    {
        var standIn = (1 - PowerShare) * siemensPerWatt;
        if (!loads.Hold(Volts))
        {
            foreach (var load in loads.Drawing)
                AddLoad(network.Loads[load], run.DemandOf(load));
            return;
        }

        for (var i = 0; i < network.FirstGround; i++)
        {
            var point = loads.At(i, Volts[i], PowerShare, standIn);
            nodal.Add(i, point);
            DrawnWatts += point.Amperes * Volts[i];
            IsBeyondAnEnd |= loads.IsBeyondTheEnd(i, Volts[i], PowerShare);
        }

        foreach (var load in loads.Alone)
            AddLoad(network.Loads[load], run.DemandOf(load));
    }

    private double AddLoad(CompiledLoad load, CompiledDemand demand)
    {
        if (!run.Energised[load.Node])
            return 0;
        var v = VoltsAcross(load);
        var point = BranchLaw.Load(demand, v, PowerShare, (1 - PowerShare) * siemensPerWatt);
        if (demand.Law == LoadLaw.Power)
            IsBeyondAnEnd |= BranchLaw.IsBeyondTheEnd(demand.Value * PowerShare, v, demand.Conductors);
        if (load.Ground < 0)
            nodal.Add(load.Node, point);
        else
            nodal.AddBetween(load.Node, load.Ground, point);
        DrawnWatts += point.Amperes * v;
        return point.Amperes;
    }

    private double VoltsAcross(CompiledLoad load) => Volts[load.Node] - (load.Ground < 0 ? 0 : Volts[load.Ground]);
}
