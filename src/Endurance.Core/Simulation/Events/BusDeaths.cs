namespace Endurance.Simulation.Events;

/// <summary>Why each bus that has no source lost its last one.</summary>
internal sealed class BusDeaths
{
    private readonly RunState run;
    private readonly LossReason[] reasons;

    public BusDeaths(CompiledNetwork network, RunState run)
    {
        this.run = run;
        reasons = new LossReason[network.NodeCount];
        Array.Fill(reasons, LossReason.NeverFed);
    }

    /// <summary>What a load on a bus is lost by when its voltage is too low there.</summary>
    public LossReason this[int bus] => reasons[bus];

    /// <summary>Remembers what has just happened for the buses that were fed before it and are not now.</summary>
    public void Note(LossReason cause)
    {
        for (var i = 0; i < reasons.Length; i++)
        {
            if (run.Energised[i])
                reasons[i] = LossReason.BelowMinimum;
            else if (reasons[i] == LossReason.BelowMinimum)
                reasons[i] = cause;
        }
    }
}
