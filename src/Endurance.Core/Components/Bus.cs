using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A point that things are connected to; its voltage is against airframe ground.</summary>
public sealed record Bus
{
    public required string Name { get; init; }

    /// <summary>Voltage below which the bus counts as lost; above 0 V. <see langword="null"/>: the bus is not judged.</summary>
    public Voltage? Cutoff { get; init; }
}
