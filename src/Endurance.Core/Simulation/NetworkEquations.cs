namespace Endurance.Simulation;

/// <summary>Kirchhoff's current law at every bus: residual, Jacobian and branch currents at the present voltages.</summary>
internal sealed class NetworkEquations
{
    private const double GroundLeak = 1e-12;

    /// <summary>Kelvin within which a junction counts as settled; far below the 0.01 K that matters, so that rates stay smooth.</summary>
    private const double JunctionTolerance = 1e-4;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly int n;
    private readonly JunctionState[] junctions;
    private readonly double[] standing;
    private bool stands;

    /// <summary>Siemens of the resistor per watt of a constant-power load at share 0.</summary>
    private double siemensPerWatt;

    public NetworkEquations(CompiledNetwork network, RunState run)
    {
        this.network = network;
        this.run = run;
        n = network.BusCount;
        Volts = new double[n];
        Residual = new double[n];
        Jacobian = new double[n * n];
        BatteryEmf = new double[network.Batteries.Length];
        BatteryResistance = new double[network.Batteries.Length];
        BatteryChargeLimit = new double[network.Batteries.Length];
        BatteryAmperes = new double[network.Batteries.Length];
        AlternatorAmperes = new double[network.Alternators.Length];
        FeedAmperes = new double[network.Feeds.Length];
        LoadAmperes = new double[network.Loads.Length];
        CoilAmperes = new double[network.Coils.Length];
        standing = new double[network.Loads.Length];
        junctions = [.. network.Feeds.Select(feed => new JunctionState(feed, network.Ambient))];
        HasHeatPaths = junctions.Any(junction => junction.MovesWithHeat);
    }

    public double[] Volts { get; }

    /// <summary>Amperes leaving each bus.</summary>
    public double[] Residual { get; }

    /// <summary>Row by row, siemens.</summary>
    public double[] Jacobian { get; }

    public double[] BatteryEmf { get; }

    public double[] BatteryResistance { get; }

    public double[] BatteryChargeLimit { get; }

    /// <summary>Positive when discharging.</summary>
    public double[] BatteryAmperes { get; }

    public double[] AlternatorAmperes { get; }

    public double[] FeedAmperes { get; }

    public double[] LoadAmperes { get; }

    public double[] CoilAmperes { get; }

    /// <summary>
    /// Share of every constant-power load that draws P/v, 0 to 1; the rest stands as a resistor that draws less than P/v at any
    /// possible voltage. Without that resistor a network of constant-power loads alone would start with nothing flowing, where
    /// diodes and full batteries have no slope and no share of power, however small, could be told from a collapse.
    /// </summary>
    public double PowerShare { get; set; } = 1;

    /// <summary>A junction's heat and temperature drove each other without end.</summary>
    public bool ThermalRunaway { get; set; }

    private bool HasHeatPaths { get; }

    /// <summary>Highest EMF or set-point of a working source; at least 1 V.</summary>
    public double HighestSource
    {
        get
        {
            var highest = 1.0;
            for (var i = 0; i < network.Batteries.Length; i++)
            {
                if (run.IsJoined(i))
                    highest = Math.Max(highest, BatteryEmf[i]);
            }

            for (var i = 0; i < network.Alternators.Length; i++)
            {
                if (run.Generates(i))
                    highest = Math.Max(highest, network.Alternators[i].Setpoint);
            }

            return highest;
        }
    }

    /// <summary>Every live bus at the highest source: above every solution.</summary>
    public void SetHighStart()
    {
        var high = HighestSource;
        siemensPerWatt = 1 / (high * high);
        for (var i = 0; i < n; i++)
            Volts[i] = run.Energised[i] ? high : 0;
    }

    /// <summary>Junction temperature of a feed's diode, kelvin.</summary>
    public double JunctionKelvin(int feed) => junctions[feed].Kelvin;

    /// <summary>Heat in a feed's diode, watts.</summary>
    public double DiodeWatts(int feed)
    {
        var branch = network.Feeds[feed];
        if (!branch.HasDiode || !run.Conducting[feed])
            return 0;
        var amperes = FeedAmperes[feed];
        return amperes * (Volts[branch.From] - Volts[branch.To] - (amperes * branch.ConductorResistance));
    }

    /// <summary>Sets junctions to ambient plus their heat times the heat path; <see langword="true"/> when any moved.</summary>
    public bool MoveJunctions()
    {
        if (!HasHeatPaths)
            return false;
        var moved = false;
        for (var i = 0; i < junctions.Length; i++)
        {
            if (junctions[i].MovesWithHeat)
                moved |= junctions[i].MoveTo(DiodeWatts(i), JunctionTolerance);
        }

        return moved;
    }

    /// <summary>Fills residual, Jacobian and branch currents at the present voltages.</summary>
    public void Assemble()
    {
        Array.Clear(Residual);
        Array.Clear(Jacobian);
        for (var i = 0; i < n; i++)
        {
            var live = run.Energised[i];
            Jacobian[(i * n) + i] = live ? GroundLeak : 1;
            if (live)
                Residual[i] = GroundLeak * Volts[i];
            else
                Volts[i] = 0;
        }

        AddFeeds();
        AddBatteries();
        AddAlternators();
        for (var i = 0; i < network.Loads.Length; i++)
            LoadAmperes[i] = run.LoadDraws(i) ? AddLoad(i) : 0;
        for (var i = 0; i < network.Coils.Length; i++)
            CoilAmperes[i] = run.ContactorClosed[network.CoilFeeds[i]] ? AddToGround(network.Coils[i], LawOf(network.Coils[i])) : 0;
    }

    /// <summary>Writes the full-power current of all constant-power loads at each bus.</summary>
    public void PowerCurrents(double[] amperes)
    {
        Array.Clear(amperes);
        for (var i = 0; i < network.Loads.Length; i++)
        {
            var load = network.Loads[i];
            if (load.Law == LoadLaw.Power && run.LoadDraws(i) && run.Energised[load.Node])
                amperes[load.Node] += BranchLaw.Load(load, Volts[load.Node], 1, 0).Amperes;
        }
    }

    /// <summary>Holds every constant-power load at the current it draws at the present voltages, until <see cref="ReleasePower"/>.</summary>
    public void HoldPower()
    {
        for (var i = 0; i < network.Loads.Length; i++)
            standing[i] = network.Loads[i].Law == LoadLaw.Power ? BranchLaw.Load(network.Loads[i], Volts[network.Loads[i].Node], PowerShare, 0).Amperes : 0;
        stands = true;
    }

    public void ReleasePower() => stands = false;

    /// <summary>Whether the bus of a constant-power load has fallen below every voltage of use.</summary>
    public bool HasRunAway()
    {
        for (var i = 0; i < network.Loads.Length; i++)
        {
            var load = network.Loads[i];
            if (load.Law == LoadLaw.Power && run.LoadDraws(i) && run.Energised[load.Node] && !(Volts[load.Node] > CompiledLoad.LowestConstantCurrentVolts))
                return true;
        }

        return false;
    }

    public int WorstBus()
    {
        var worst = 0;
        for (var i = 1; i < n; i++)
        {
            if (Math.Abs(Residual[i]) > Math.Abs(Residual[worst]))
                worst = i;
        }

        return worst;
    }

    public double WorstResidual() => Residual[WorstBus()];

    private void AddFeeds()
    {
        for (var i = 0; i < network.Feeds.Length; i++)
        {
            var feed = network.Feeds[i];
            FeedAmperes[i] = 0;
            if (!run.Conducting[i] || !run.Energised[feed.From] || !run.Energised[feed.To])
                continue;
            var v = Volts[feed.From] - Volts[feed.To];
            var point = FeedPoint(feed, i, v);
            FeedAmperes[i] = point.Amperes;
            Residual[feed.From] += point.Amperes;
            Residual[feed.To] -= point.Amperes;
            Jacobian[(feed.From * n) + feed.From] += point.Siemens;
            Jacobian[(feed.To * n) + feed.To] += point.Siemens;
            Jacobian[(feed.From * n) + feed.To] -= point.Siemens;
            Jacobian[(feed.To * n) + feed.From] -= point.Siemens;
        }
    }

    private BranchPoint FeedPoint(CompiledFeed feed, int index, double v)
    {
        if (run.DiodeShorted[index])
        {
            var resistance = feed.ConductorResistance + feed.ShortedResistance;
            return new(v / resistance, 1 / resistance);
        }

        switch (feed.Law)
        {
            case FeedLaw.JunctionDiode:
                return BranchLaw.Junction(v, junctions[index], feed.SeriesResistance, feed.Leakage);
            case FeedLaw.IdealDiode:
                return BranchLaw.IdealDiode(v, feed.OnResistance, feed.RegulatedDrop, feed.ConductorResistance);
            default:
                return new(v / feed.SeriesResistance, 1 / feed.SeriesResistance);
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
            Add(node, point);
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
            var point = BranchLaw.Alternator(Volts[alternator.Node], alternator);
            AlternatorAmperes[i] = -point.Amperes;
            Add(alternator.Node, point);
        }
    }

    private double AddLoad(int index)
    {
        var load = network.Loads[index];
        return AddToGround(load, stands && load.Law == LoadLaw.Power ? BranchLaw.Standing(standing[index], Volts[load.Node]) : LawOf(load));
    }

    private BranchPoint LawOf(CompiledLoad load) => BranchLaw.Load(load, Volts[load.Node], PowerShare, (1 - PowerShare) * siemensPerWatt);

    private double AddToGround(CompiledLoad load, BranchPoint point)
    {
        if (!run.Energised[load.Node])
            return 0;
        Add(load.Node, point);
        return point.Amperes;
    }

    private void Add(int node, BranchPoint point)
    {
        Residual[node] += point.Amperes;
        Jacobian[(node * n) + node] += point.Siemens;
    }
}
