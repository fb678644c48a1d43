using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Something that conducts from anode to cathode only. The kinds are <see cref="JunctionDiode"/> and <see cref="IdealDiodeController"/>.</summary>
public abstract record Diode
{
    /// <summary>Largest steady current by its data sheet; above zero. <see langword="null"/>: not given, not checked.</summary>
    public Current? Rated { get; init; }

    /// <summary>Resistance, both ways, after it has failed short; 1 mohm unless given.</summary>
    public Resistance ShortResistance { get; init; } = Resistance.FromMilliohms(1);
}
