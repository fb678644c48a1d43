namespace Endurance.Simulation;

/// <summary>A load, a contactor's coil or an alternator's field as numbers in SI units.</summary>
internal sealed class CompiledLoad
{
    public required string Name { get; init; }

    /// <summary>Node of its positive supply.</summary>
    public required int Node { get; init; }

    /// <summary>Node of its ground point; -1 for the airframe.</summary>
    public int Ground { get; init; } = -1;

    public required CompiledDemand Demand { get; init; }

    /// <summary>What it draws while it starts; <see langword="null"/>: the same.</summary>
    public CompiledDemand? Inrush { get; init; }

    /// <summary>Seconds that <see cref="Inrush"/> lasts.</summary>
    public double InrushLasts { get; init; }

    /// <summary>Volts at its own terminals; 0 when there is none.</summary>
    public double Minimum { get; init; }

    public bool HasMinimum => Minimum > 0;

    /// <summary>Volts at its terminals at which it counts as lost: its minimum, its bus's cutoff or the last resort.</summary>
    public double JudgedAt { get; init; }

    /// <summary>Volts; <see cref="double.NaN"/> when it never restarts.</summary>
    public double Restart { get; init; } = double.NaN;

    public bool CanRestart => !double.IsNaN(Restart);

    /// <summary>Seconds for which the restart voltage must hold.</summary>
    public double StartUp { get; init; }

    /// <summary>Indices of the loads without which it is of no use.</summary>
    public int[] Needs { get; init; } = [];
}
