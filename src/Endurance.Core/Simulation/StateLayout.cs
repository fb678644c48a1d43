namespace Endurance.Simulation;

/// <summary>Where each quantity stands in the state vector: charges first, whose error is controlled, then running totals.</summary>
internal sealed class StateLayout
{
    public StateLayout(CompiledNetwork network)
    {
        Controlled = network.Batteries.Length;
        Delivered = Controlled;
        DeliveredEnergy = Delivered + network.Batteries.Length;
        Received = DeliveredEnergy + network.Batteries.Length;
        FeedReverse = Received + network.Batteries.Length;
        SourceEnergy = FeedReverse + network.Feeds.Length;
        SinkEnergy = SourceEnergy + 1;
        Size = SinkEnergy + 1;
    }

    /// <summary>Number of components whose error is controlled; battery i's charge is component i.</summary>
    public int Controlled { get; }

    /// <summary>First of the batteries' discharge integrals, coulombs.</summary>
    public int Delivered { get; }

    /// <summary>First of the batteries' terminal energies while discharging, joules.</summary>
    public int DeliveredEnergy { get; }

    /// <summary>First of the batteries' charge integrals, coulombs.</summary>
    public int Received { get; }

    /// <summary>First of the feeds' reverse integrals, coulombs.</summary>
    public int FeedReverse { get; }

    /// <summary>Energy out of EMFs and alternators, joules.</summary>
    public int SourceEnergy { get; }

    /// <summary>Energy into loads, coils, resistances and diodes, joules.</summary>
    public int SinkEnergy { get; }

    public int Size { get; }
}
