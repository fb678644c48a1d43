namespace Endurance.Simulation;

/// <summary>The input powers of all chargers, which follow their outputs from one solve of the network to the next.</summary>
internal sealed class Chargers
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly ChargerInput[] inputs;

    public Chargers(CompiledNetwork network, RunState run)
    {
        this.network = network;
        this.run = run;
        inputs = new ChargerInput[network.Chargers.Length];
        for (var i = 0; i < inputs.Length; i++)
            inputs[i] = new ChargerInput();
    }

    /// <summary>Whether some charger settles nowhere below a power that leaves no operating point.</summary>
    public bool IsAnyCornered => Array.Exists(inputs, static input => input.IsCornered);

    /// <summary>Whether some guess left no operating point since something else moved last.</summary>
    public bool IsAnyLowered => Array.Exists(inputs, static input => input.IsLowered);

    /// <summary>Watts into a charger's input.</summary>
    public double this[int charger] => inputs[charger].Watts;

    /// <summary>Settles from where they stand; for when the network has changed.</summary>
    public void Start()
    {
        foreach (var input in inputs)
            input.Start();
    }

    /// <summary>Forgets where they gained and lost; for when something else has moved.</summary>
    public void Forget()
    {
        foreach (var input in inputs)
            input.Forget();
    }

    /// <summary>Sets every input to what its output takes; <see langword="true"/> when any moved.</summary>
    /// <param name="volts">By node, of a solution.</param>
    /// <param name="amperes">By charger, at the output.</param>
    public bool Move(ReadOnlySpan<double> volts, ReadOnlySpan<double> amperes)
    {
        var moved = false;
        for (var i = 0; i < inputs.Length; i++)
        {
            var charger = network.Chargers[i];
            moved |= inputs[i].MoveTo(run.Charges(i) ? Math.Max(0, volts[charger.To]) * amperes[i] / charger.Efficiency : 0);
        }

        return moved;
    }

    /// <summary>Where there is no operating point: lowers what may have been guessed too high; <see langword="false"/>: nothing was.</summary>
    public bool TryLower()
    {
        var any = false;
        foreach (var input in inputs)
            any |= input.TryLower();
        return any;
    }

    /// <summary>Undoes <see cref="TryLower"/>; <see langword="false"/>: it never lowered any.</summary>
    public bool TryRaise()
    {
        var any = false;
        foreach (var input in inputs)
            any |= input.TryRaise();
        return any;
    }
}
