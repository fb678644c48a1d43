namespace Endurance.Simulation;

/// <summary>Where each quantity stands in the state vector: charges first, whose error is controlled, then running totals.</summary>
internal sealed class StateLayout
{
    /// <summary>Volts of polarisation that weigh as much as the whole charge.</summary>
    private const double VoltScale = 10;

    public StateLayout(CompiledNetwork network)
    {
        Controlled = network.Batteries.Sum(battery => battery.StateCount);
        Delivered = Controlled;
        DeliveredEnergy = Delivered + network.Batteries.Length;
        Received = DeliveredEnergy + network.Batteries.Length;
        FeedReverse = Received + network.Batteries.Length;
        SourceEnergy = FeedReverse + network.Feeds.Length;
        SinkEnergy = SourceEnergy + 1;
        Size = SinkEnergy + 1;
        Scales = new double[Controlled];
        foreach (var battery in network.Batteries)
        {
            Scales.AsSpan(battery.Slot, battery.StateCount).Fill(VoltScale);
            Scales.AsSpan(battery.Slot, battery.ChargeCount).Fill(1);
        }
    }

    /// <summary>What the tolerance is multiplied by for each controlled component.</summary>
    public double[] Scales { get; }

    /// <summary>Number of components whose error is controlled: those of the batteries.</summary>
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
