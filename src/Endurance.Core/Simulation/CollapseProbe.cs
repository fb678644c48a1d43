namespace Endurance.Simulation;

/// <summary>Tells where the voltage falls away when a network has no operating point.</summary>
internal sealed class CollapseProbe
{
    /// <summary>Share of the largest fall below which a node counts as staying up.</summary>
    private const double LeastFall = 0.1;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly NetworkEquations equations;
    private readonly double[] motion;
    private readonly double[] fall;
    private readonly double[] factors;

    public CollapseProbe(CompiledNetwork network, RunState run, NetworkEquations equations)
    {
        this.network = network;
        this.run = run;
        this.equations = equations;
        motion = new double[network.NodeCount];
        fall = new double[network.NodeCount];
        factors = new double[network.NodeCount * network.NodeCount];
        Buses = new bool[network.NodeCount];
        Loads = new bool[network.Loads.Length];
    }

    /// <summary>The nodes that move most where the solution is about to vanish, those at half or more of the largest motion, and do not stay up beyond.</summary>
    public bool[] Buses { get; }

    /// <summary>The loads whose own conductors cannot carry their power.</summary>
    public bool[] Loads { get; }

    /// <summary>Takes how far every node has fallen on the way down from the last solution; zero volts count as the bottom.</summary>
    public void TakeFall(ReadOnlySpan<double> from)
    {
        for (var i = 0; i < fall.Length; i++)
            fall[i] = from[i] - Math.Max(0, equations.Volts[i]);
    }

    /// <summary>Fills <see cref="Buses"/> and <see cref="Loads"/> at the last solution, found at a share of the constant power.</summary>
    /// <remarks>
    /// Before a fold the motion of what falls grows without bound. Where a converter meets its limit the solution ends with the motion still
    /// small, and that of the bus that feeds it no smaller than that of the bus that falls: only the way down beyond tells them apart.
    /// </remarks>
    public void Mark(double reached)
    {
        equations.PowerShare = reached;
        equations.Assemble();
        // So near to where the solution vanishes, it may look just past it.
        if (!network.Elimination.TryFactorShifted(equations.Jacobian, factors))
            throw new UnsolvedNetworkException(network.NodeNames[equations.WorstBus()], equations.WorstResidual());
        FillPowerCurrents();
        network.Elimination.Solve(factors, motion);
        if (!TryMark(motion, LeastFall))
            TryMark(fall, 0);
        for (var i = 0; i < Loads.Length; i++)
        {
            var demand = run.DemandOf(i);
            Loads[i] = Takes(i) && BranchLaw.IsBeyondTheEnd(demand.Value, equations.LoadVolts(i), demand.Conductors);
        }
    }

    /// <summary>Marks the nodes at half or more of the largest value, less those that stay up; <see langword="false"/>: none is left.</summary>
    private bool TryMark(ReadOnlySpan<double> values, double leastFall)
    {
        var largest = LargestEnergised(values);
        var deepest = LargestEnergised(fall);
        var any = false;
        for (var i = 0; i < values.Length; i++)
        {
            Buses[i] = run.Energised[i] && values[i] >= largest / 2 && fall[i] >= leastFall * deepest;
            any |= Buses[i];
        }

        return any;
    }

    private double LargestEnergised(ReadOnlySpan<double> values)
    {
        var largest = 0.0;
        for (var i = 0; i < values.Length; i++)
        {
            if (run.Energised[i])
                largest = Math.Max(largest, values[i]);
        }

        return largest;
    }

    /// <summary>Lowest voltage at which a constant-power load draws; positive infinity when none does.</summary>
    public double LowestPowerVolts()
    {
        var lowest = double.PositiveInfinity;
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (Takes(i))
                lowest = Math.Min(lowest, equations.LoadVolts(i));
        }

        return lowest;
    }

    /// <summary>The full current of all constant power at each node: how the residual grows with its share.</summary>
    private void FillPowerCurrents()
    {
        Array.Clear(motion);
        for (var i = 0; i < network.Loads.Length; i++)
        {
            if (Takes(i))
                motion[network.Loads[i].Node] += BranchLaw.Load(run.DemandOf(i), equations.LoadVolts(i));
        }

        for (var i = 0; i < network.Chargers.Length; i++)
        {
            if (run.Charges(i))
                motion[network.Chargers[i].From] += equations.Chargers[i] / equations.Volts[network.Chargers[i].From];
        }
    }

    /// <summary>Whether a load takes constant power by now.</summary>
    private bool Takes(int load) =>
        run.DemandOf(load).Law == LoadLaw.Power && run.LoadDraws(load) && run.Energised[network.Loads[load].Node];
}
