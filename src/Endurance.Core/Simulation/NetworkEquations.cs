namespace Endurance.Simulation;

/// <summary>Kirchhoff's current law at every bus: residual, Jacobian and branch currents at the present voltages.</summary>
internal sealed class NetworkEquations
{
    private const double GroundLeak = 1e-12;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly int n;
    private readonly NodalSystem nodal;
    private readonly BranchList branches;
    private readonly Junctions junctions;
    private readonly Func<int, double> diodeWatts;

    /// <summary>By node, to the airframe. A node that no source reaches is held at 0 V.</summary>
    private readonly double[] leak;
    private readonly double[] amperes;

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
        Chargers = new Chargers(network, run);
        branches = new BranchList(network, run);
        amperes = new double[branches.SlotCount];
        leak = new double[n];
        junctions = new Junctions(network, tolerance);
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

    /// <summary>Of the last solution; positive when discharging.</summary>
    public ReadOnlySpan<double> BatteryAmperes => amperes.AsSpan(branches.FirstBattery, network.Batteries.Length);

    /// <summary>Of the last solution.</summary>
    public ReadOnlySpan<double> AlternatorAmperes => amperes.AsSpan(branches.FirstAlternator, network.Alternators.Length);

    /// <summary>Of the last solution.</summary>
    public ReadOnlySpan<double> FeedAmperes => amperes.AsSpan(0, network.Feeds.Length);

    /// <summary>At the output, of the last solution.</summary>
    public ReadOnlySpan<double> ChargerAmperes => amperes.AsSpan(branches.FirstCharger, network.Chargers.Length);

    /// <summary>What chargers take at their inputs; follows their outputs by <see cref="MoveChargers"/>.</summary>
    public Chargers Chargers { get; }

    /// <summary>Stands for which pieces of their laws the branches are on in the last solution; another number, another piece of some.</summary>
    public ulong Pieces { get; private set; }

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

    /// <summary>Whether any junction follows its own heat.</summary>
    public bool HasHeatPaths => junctions.AnyMoves;

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
        branches.TakeState();
        Array.Clear(amperes);
        for (var i = 0; i < n; i++)
        {
            leak[i] = run.Energised[i] ? GroundLeak : 1;
            if (i >= network.FirstGround)
                leak[i] += network.GroundSiemens[i - network.FirstGround];
            if (!run.Energised[i])
                Volts[i] = 0;
        }
    }

    /// <summary>Amperes of a load at the present voltages; zero when it does not draw.</summary>
    public double LoadAmperes(int load) =>
        run.LoadDraws(load) && run.Energised[network.Loads[load].Node] ? BranchLaw.Load(run.DemandOf(load), LoadVolts(load)) : 0;

    /// <summary>Volts between a load's supply and its ground.</summary>
    public double LoadVolts(int load)
    {
        var compiled = network.Loads[load];
        return Along(Volts, compiled.Node, compiled.Ground, -1);
    }

    /// <summary>Junction temperature of a feed's diode, kelvin.</summary>
    public double JunctionKelvin(int feed) => junctions[feed].Kelvin;

    /// <summary>Heat in a feed's diode, watts.</summary>
    public double DiodeWatts(int feed)
    {
        var branch = network.Feeds[feed];
        if (!branch.HasDiode || !run.Conducting[feed])
            return 0;
        var current = FeedAmperes[feed];
        return current * (Along(Volts, branch.From, branch.To, branch.Ground) - (current * branch.ConductorResistance));
    }

    /// <summary>Watts into feeds, loads, coils and fields.</summary>
    public double SinkWatts()
    {
        var watts = 0.0;
        foreach (ref var branch in branches.All)
        {
            if (branch.IsSink)
                watts += branch.Amperes * VoltsAlong(ref branch, Volts);
        }

        return watts;
    }

    /// <summary>Volts by which the grounds that feeds return through can lift a bus above every source, one after another.</summary>
    public double Lift()
    {
        var volts = 0.0;
        foreach (ref var branch in branches.All)
            volts += branch.Return < 0 ? 0 : Math.Abs(Volts[branch.Return]);
        return volts;
    }

    /// <summary>Sets the input power of every charger to what its output takes; <see langword="true"/> when any moved.</summary>
    public bool MoveChargers() => Chargers.Move(Volts, ChargerAmperes);

    /// <summary>Takes guesses of the junction temperatures that follow their heat, kelvin by feed, to start from.</summary>
    public void StartJunctions(ReadOnlySpan<double> kelvin) => junctions.Start(kelvin);

    /// <summary>Sets junctions to ambient plus their heat times the heat path; <see langword="true"/> when any moved.</summary>
    public bool MoveJunctions()
    {
        if (!junctions.Move(diodeWatts))
            return false;
        Chargers.Forget();
        return true;
    }

    /// <summary>Fills residual, Jacobian and branch currents at the present voltages.</summary>
    public void Assemble()
    {
        nodal.Begin(leak, Volts);
        IsBeyondAnEnd = false;
        foreach (ref var branch in branches.All)
        {
            branch.Volts = VoltsAlong(ref branch, Volts);
            Evaluate(ref branch);
            nodal.Add(ref branch);
        }
    }

    /// <summary>By how much the currents depart from their tangents when the volts have moved from those of the last assembly.</summary>
    /// <param name="move">Volts by node.</param>
    /// <param name="leaving">Filled: amperes leaving each node.</param>
    /// <returns>Amperes that any of these may be wrong by.</returns>
    public double Depart(ReadOnlySpan<double> move, Span<double> leaving)
    {
        leaving.Clear();
        var unsure = 0.0;
        var all = branches.All;
        foreach (var i in branches.Curved)
        {
            ref var branch = ref all[i];
            var departure = branch.Departure(VoltsAlong(ref branch, move), out var doubt);
            NodalSystem.AddCurrent(leaving, ref branch, departure);
            unsure += doubt;
        }

        return unsure;
    }

    /// <summary>Moves the volts from those of the last assembly, and currents and residual with them as far as their derivatives hold.</summary>
    /// <param name="move">Volts by node.</param>
    /// <returns><see langword="false"/>: some do not hold so far; the network must be assembled again.</returns>
    public bool TryMove(ReadOnlySpan<double> move)
    {
        for (var i = 0; i < n; i++)
        {
            Volts[i] += move[i];
            Residual[i] = leak[i] * Volts[i];
        }

        foreach (ref var branch in branches.All)
        {
            if (!branch.TryMove(VoltsAlong(ref branch, move)))
                return false;
            NodalSystem.AddCurrent(Residual, ref branch, branch.Amperes);
        }

        return true;
    }

    /// <summary>Makes the currents of the parts those of the branches; for once they balance.</summary>
    public void Publish()
    {
        Pieces = 0;
        foreach (ref var branch in branches.All)
        {
            Pieces = (Pieces * 3) + (ulong)branch.Piece;
            if (branch.Slot >= 0)
                amperes[branch.Slot] = branch.Amperes;
        }
    }

    public int WorstBus() => nodal.Worst();

    public double WorstResidual() => Residual[WorstBus()];

    private static double VoltsAlong(ref Branch branch, ReadOnlySpan<double> volts) => Along(volts, branch.From, branch.To, branch.Return);

    /// <summary>Volts from node to node, less those of the ground that the current comes back through; -1 is the airframe.</summary>
    private static double Along(ReadOnlySpan<double> volts, int from, int to, int back)
    {
        var along = from < 0 ? 0 : volts[from];
        if (to >= 0)
            along -= volts[to];
        return back < 0 ? along : along - volts[back];
    }

    private void Evaluate(ref Branch branch)
    {
        var part = branch.Part;
        switch (branch.Kind)
        {
            case BranchKind.Junction:
                BranchLaw.Junction(ref branch, junctions[part], network.Feeds[part].Leakage);
                break;
            case BranchKind.IdealDiode:
                var feed = network.Feeds[part];
                BranchLaw.IdealDiode(ref branch, feed.OnResistance, feed.RegulatedDrop, feed.ConductorResistance);
                break;
            case BranchKind.Battery:
                BranchLaw.Battery(ref branch, BatteryEmf[part], BatteryResistance[part], BatteryChargeLimit[part], run.BatteryExhausted[part]);
                break;
            case BranchKind.Alternator:
                BranchLaw.Regulated(ref branch, network.Alternators[part].Setpoint, network.Alternators[part].Droop, run.LimitOf(part));
                break;
            case BranchKind.ChargerOutput:
                BranchLaw.Regulated(ref branch, network.Chargers[part].Output, network.Chargers[part].Droop, network.Chargers[part].Limit);
                break;
            case BranchKind.ChargerInput:
                IsBeyondAnEnd |= BranchLaw.ConstantPower(ref branch, Chargers[part] * PowerShare, 0);
                break;
            case BranchKind.Power:
                IsBeyondAnEnd |= BranchLaw.ConstantPower(ref branch, branch.Value * PowerShare, branch.Detail);
                if (PowerShare < 1)
                    branch.AddParallel(branch.Value * (1 - PowerShare) * siemensPerWatt);
                break;
            case BranchKind.Current:
                BranchLaw.ConstantCurrent(ref branch, branch.Value, branch.Detail);
                break;
            default:
                BranchLaw.Ohmic(ref branch, branch.Value);
                break;
        }
    }
}
