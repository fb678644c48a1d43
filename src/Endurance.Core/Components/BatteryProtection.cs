using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>What the electronics of a lithium pack do: they open at once, both ways, and stay open unless told otherwise.</summary>
public sealed record BatteryProtection
{
    /// <summary>Terminal voltage below which the pack opens; above zero.</summary>
    public Voltage? OpensBelow { get; init; }

    /// <summary>Discharge current above which the pack opens; above zero.</summary>
    public Current? OpensAbove { get; init; }

    /// <summary>Battery temperature below which charge current alone is blocked.</summary>
    public Temperature? NoChargeBelow { get; init; }

    /// <summary>Bus voltage above which an open pack closes again; <see langword="null"/>: it stays open.</summary>
    public Voltage? RecloseAbove { get; init; }
}
