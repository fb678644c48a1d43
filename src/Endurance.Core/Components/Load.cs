using System.Collections.Immutable;
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

    public Wire? Wire { get; init; }

    public Switch? Switch { get; init; }

    public Protection? Breaker { get; init; }

    public Protection? Fuse { get; init; }

    public ReturnPath? Return { get; init; }

    /// <summary>Supplies ORed inside the load, two or more; empty: fed from <see cref="Bus"/> alone. With inputs, <see cref="Bus"/> is the first of them.</summary>
    public ImmutableArray<LoadInput> Inputs { get; init; } = [];

    /// <summary>Largest short draw, for the load analysis; above zero.</summary>
    public Current? Peak { get; init; }

    public Inrush? Inrush { get; init; }

    /// <summary>Loads without which this one is of no use.</summary>
    public ImmutableArray<string> Needs { get; init; } = [];

    /// <summary>Phase of flight it belongs to; <see langword="null"/>: all.</summary>
    public string? Phase { get; init; }

    public LoadBasis? Basis { get; init; }

    public DateOnly? MeasuredOn { get; init; }

    /// <summary>Full draw at a voltage above zero.</summary>
    public Current CurrentAt(Voltage voltage) => Demand.CurrentAt(voltage);

    /// <summary>Conductors between its bus and its terminals, there and back; zero or more.</summary>
    public Resistance BranchResistance =>
        (Wire?.Resistance ?? default) + (Switch?.ContactResistance ?? default) + (Breaker?.Resistance ?? default)
        + (Fuse?.Resistance ?? default) + (Return?.Wire.Resistance ?? default);
}
