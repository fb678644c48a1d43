namespace Endurance.Simulation;

/// <summary>The loads that draw by now, added up by node, so that an iteration costs by nodes and not by loads.</summary>
/// <remarks>Loads with conductors or a ground point of their own stay single, and so does every load once some voltage is below its constant-current range.</remarks>
internal sealed class NodeLoads
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly double[] siemens;
    private readonly double[] amperes;
    private readonly double[] watts;
    private readonly double[] knee;
    private readonly int[] alone;
    private readonly int[] drawing;
    private int aloneCount;
    private int drawingCount;

    public NodeLoads(CompiledNetwork network, RunState run)
    {
        this.network = network;
        this.run = run;
        siemens = new double[network.NodeCount];
        amperes = new double[network.NodeCount];
        watts = new double[network.NodeCount];
        knee = new double[network.NodeCount];
        alone = new int[network.Loads.Length];
        drawing = new int[network.Loads.Length];
    }

    /// <summary>The loads that are not part of any node's sums.</summary>
    public ReadOnlySpan<int> Alone => alone.AsSpan(0, aloneCount);

    /// <summary>Every load that draws and whose node is energised.</summary>
    public ReadOnlySpan<int> Drawing => drawing.AsSpan(0, drawingCount);

    /// <summary>Adds up again after the discrete state has changed.</summary>
    public void Sum()
    {
        Array.Clear(siemens);
        Array.Clear(amperes);
        Array.Clear(watts);
        Array.Clear(knee);
        (aloneCount, drawingCount) = (0, 0);
        for (var i = 0; i < network.Loads.Length; i++)
        {
            var load = network.Loads[i];
            if (!run.LoadDraws(i) || !run.Energised[load.Node])
                continue;
            drawing[drawingCount++] = i;
            var demand = run.DemandOf(i);
            if (load.Ground >= 0 || demand.Conductors > 0)
                alone[aloneCount++] = i;
            else
                Add(load.Node, demand);
        }
    }

    /// <summary>Whether every node is in the range in which its sums hold.</summary>
    public bool Hold(double[] volts)
    {
        for (var i = 0; i < knee.Length; i++)
        {
            if (volts[i] < knee[i])
                return false;
        }

        return true;
    }

    /// <summary>Current of a node's sums, within their range.</summary>
    /// <param name="node">The node.</param>
    /// <param name="v">Volts there.</param>
    /// <param name="powerShare">Share of the constant power that draws P/v.</param>
    /// <param name="standIn">Siemens per watt of the resistor in place of the rest.</param>
    public BranchPoint At(int node, double v, double powerShare, double standIn)
    {
        var conductance = siemens[node] + (watts[node] * standIn);
        var current = (conductance * v) + amperes[node];
        if (watts[node] <= 0)
            return new(current, conductance);
        var power = BranchLaw.ConstantPower(watts[node] * powerShare, v, 0);
        return new(current + power.Amperes, conductance + power.Siemens);
    }

    /// <summary>Whether a node's constant power is at a voltage where only the tangent stands for it.</summary>
    public bool IsBeyondTheEnd(int node, double v, double powerShare) => BranchLaw.IsBeyondTheEnd(watts[node] * powerShare, v, 0);

    private void Add(int node, CompiledDemand demand)
    {
        switch (demand.Law)
        {
            case LoadLaw.Conductance:
                siemens[node] += demand.BusValue;
                break;
            case LoadLaw.Power:
                watts[node] += demand.Value;
                break;
            default:
                amperes[node] += demand.Value;
                knee[node] = Math.Max(knee[node], demand.Knee);
                break;
        }
    }
}
