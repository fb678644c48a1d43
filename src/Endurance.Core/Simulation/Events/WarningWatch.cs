namespace Endurance.Simulation.Events;

/// <summary>One low-voltage warning of a run.</summary>
internal sealed class WarningWatch
{
    private readonly double hold;

    /// <param name="name">Name of the warning.</param>
    /// <param name="bus">Index of the bus it senses.</param>
    /// <param name="threshold">Volts.</param>
    /// <param name="hold">Seconds below before it comes on.</param>
    public WarningWatch(string name, int bus, double threshold, double hold)
    {
        Name = name;
        Bus = bus;
        Threshold = threshold;
        this.hold = hold;
    }

    public string Name { get; }

    public int Bus { get; }

    /// <summary>Volts.</summary>
    public double Threshold { get; }

    public bool IsBelow { get; private set; }

    public bool HasFailed { get; private set; }

    /// <summary>Seconds at which it came on; NaN while it has not.</summary>
    public double OnAt { get; private set; } = double.NaN;

    /// <summary>Nothing more will come of it: it is on already, or has failed.</summary>
    public bool IsSilent => HasFailed || !double.IsNaN(OnAt);

    /// <summary>Seconds at which it comes on; positive infinity while its bus is not low.</summary>
    public double Due { get; private set; } = double.PositiveInfinity;

    public void Cross(double seconds)
    {
        IsBelow = !IsBelow;
        Due = IsBelow ? seconds + hold : double.PositiveInfinity;
    }

    /// <summary>It fails, or works again and then knows nothing of the time before.</summary>
    public void SetFailed(bool hasFailed)
    {
        if (HasFailed == hasFailed)
            return;
        HasFailed = hasFailed;
        IsBelow = false;
        Due = double.PositiveInfinity;
    }

    public void ComeOn(double seconds)
    {
        OnAt = seconds;
        Due = double.PositiveInfinity;
    }
}
