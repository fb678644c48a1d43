namespace Endurance.Components;

/// <summary>What a switch sees when it closes and opens.</summary>
public enum LoadType
{
    /// <summary>A filament lamp: many times its current while cold.</summary>
    Lamp,

    /// <summary>A coil: arcs when it opens.</summary>
    Inductive,

    /// <summary>A heater, or electronics of steady draw.</summary>
    Resistive,

    /// <summary>A motor: its starting current.</summary>
    Motor,
}
