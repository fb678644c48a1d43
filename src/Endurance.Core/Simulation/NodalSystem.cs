namespace Endurance.Simulation;

/// <summary>Kirchhoff's current law as numbers: the current that leaves each node, and its derivatives by the node voltages.</summary>
internal sealed class NodalSystem
{
    private readonly int n;

    public NodalSystem(int nodes)
    {
        n = nodes;
        Residual = new double[n];
        Jacobian = new double[n * n];
    }

    /// <summary>Amperes leaving each node.</summary>
    public double[] Residual { get; }

    /// <summary>Row by row, siemens.</summary>
    public double[] Jacobian { get; }

    /// <summary>Begins again with what each node leaks to the airframe at its volts.</summary>
    /// <param name="siemens">By node.</param>
    /// <param name="volts">By node.</param>
    public void Begin(ReadOnlySpan<double> siemens, ReadOnlySpan<double> volts)
    {
        Array.Clear(Jacobian);
        for (var i = 0; i < n; i++)
        {
            Residual[i] = siemens[i] * volts[i];
            Jacobian[(i * n) + i] = siemens[i];
        }
    }

    /// <summary>Adds a branch at its present current.</summary>
    public void Add(ref Branch branch)
    {
        AddCurrent(Residual, ref branch, branch.Amperes);
        var (from, to, back) = (branch.From, branch.To, branch.Return);
        var siemens = branch.Siemens;
        if (from >= 0)
            Jacobian[(from * n) + from] += siemens;
        if (to >= 0)
            Jacobian[(to * n) + to] += siemens;
        if (from >= 0 && to >= 0)
        {
            Jacobian[(from * n) + to] -= siemens;
            Jacobian[(to * n) + from] -= siemens;
        }

        if (back < 0)
            return;
        Jacobian[(back * n) + back] += siemens;
        Jacobian[(back * n) + from] -= siemens;
        Jacobian[(from * n) + back] -= siemens;
        Jacobian[(back * n) + to] += siemens;
        Jacobian[(to * n) + back] += siemens;
    }

    /// <summary>Adds a current along a branch to what leaves each node.</summary>
    public static void AddCurrent(Span<double> leaving, ref Branch branch, double amperes)
    {
        if (branch.From >= 0)
            leaving[branch.From] += amperes;
        if (branch.To >= 0)
            leaving[branch.To] -= amperes;
        if (branch.Return >= 0)
            leaving[branch.Return] -= amperes;
    }

    /// <summary>The node whose currents balance worst.</summary>
    public int Worst()
    {
        var worst = 0;
        for (var i = 1; i < n; i++)
        {
            if (Math.Abs(Residual[i]) > Math.Abs(Residual[worst]))
                worst = i;
        }

        return worst;
    }
}
