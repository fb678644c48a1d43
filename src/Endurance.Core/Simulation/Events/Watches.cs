namespace Endurance.Simulation.Events;

/// <summary>What a run remembers about buses, loads and waiting steps between events.</summary>
internal sealed class Watches
{
    public Watches(CompiledNetwork network, WaitingStep[] steps, WarningWatch[] warnings)
    {
        Warnings = warnings;
        BusBelow = new bool[network.BusCount];
        LoadLost = new bool[network.Loads.Length];
        LacksNeed = new bool[network.Loads.Length];
        RestartDue = new double[network.Loads.Length];
        Array.Fill(RestartDue, double.NaN);
        Steps = steps;
    }

    /// <summary>The bus is below its cutoff.</summary>
    public bool[] BusBelow { get; }

    /// <summary>The load is connected and not powered.</summary>
    public bool[] LoadLost { get; }

    /// <summary>The load is lost because one that it needs is.</summary>
    public bool[] LacksNeed { get; }

    /// <summary>Seconds at which a dropped load that is starting up comes back; NaN when it is not starting.</summary>
    public double[] RestartDue { get; }

    /// <summary>In the order of the file; what undoes a step stands behind it.</summary>
    public WaitingStep[] Steps { get; }

    public WarningWatch[] Warnings { get; }
}
