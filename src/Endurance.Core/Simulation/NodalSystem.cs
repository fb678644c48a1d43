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

    public void Clear()
    {
        Array.Clear(Residual);
        Array.Clear(Jacobian);
    }

    /// <summary>Holds a node at 0 V.</summary>
    public void Pin(int node) => Jacobian[(node * n) + node] = 1;

    /// <summary>A branch from a node to the airframe.</summary>
    public void Add(int node, BranchPoint point)
    {
        Residual[node] += point.Amperes;
        Jacobian[(node * n) + node] += point.Siemens;
    }

    /// <summary>A branch between two nodes.</summary>
    public void AddBetween(int from, int to, BranchPoint point)
    {
        Residual[from] += point.Amperes;
        Residual[to] -= point.Amperes;
        Jacobian[(from * n) + from] += point.Siemens;
        Jacobian[(to * n) + to] += point.Siemens;
        Jacobian[(from * n) + to] -= point.Siemens;
        Jacobian[(to * n) + from] -= point.Siemens;
    }

    /// <summary>The current of a branch comes back through a ground point, whose voltage opposes it.</summary>
    public void AddReturn(int from, int to, int ground, BranchPoint point)
    {
        Residual[ground] -= point.Amperes;
        Jacobian[(ground * n) + ground] += point.Siemens;
        Jacobian[(ground * n) + from] -= point.Siemens;
        Jacobian[(from * n) + ground] -= point.Siemens;
        Jacobian[(ground * n) + to] += point.Siemens;
        Jacobian[(to * n) + ground] += point.Siemens;
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
