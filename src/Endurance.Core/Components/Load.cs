using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Something that draws from a bus.</summary>
public sealed record Load
{
    /// <summary>Voltage at which a load is judged when neither it nor its bus says otherwise.</summary>
    public static readonly Voltage LastResortMinimum = Voltage.FromVolts(1);

    public required string Name { get; init; }

    public required string Bus { get; init; }

    /// <summary>At full duty.</summary>
    public required Demand Demand { get; init; }

    /// <summary>Mean over full draw; above 0, at most 1. Multiplies amperes, watts or conductance.</summary>
    public double Duty { get; init; } = 1;

    /// <summary>Below this voltage it stops; above zero. <see langword="null"/>: judged at its bus's cutoff, else at <see cref="LastResortMinimum"/>, and stays connected.</summary>
    public Voltage? Minimum { get; init; }

    /// <summary>After a stop it comes back when this voltage has held for <see cref="StartUp"/>; <see langword="null"/>: never. Not below <see cref="Minimum"/>.</summary>
    public Voltage? Restart { get; init; }

    /// <summary>Zero or more.</summary>
    public Duration StartUp { get; init; }

    public bool IsEssential { get; init; }

    /// <summary>Connected at time zero.</summary>
    public bool IsOn { get; init; } = true;
}
