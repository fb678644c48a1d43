using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A relay whose coil draws current while it is commanded closed.</summary>
public sealed record Contactor
{
    public required bool IsClosed { get; init; }

    /// <summary>What the coil draws; <see langword="null"/>: no coil current is modelled. Either <see cref="ConstantCurrent"/> or <see cref="ConstantResistance"/>.</summary>
    public Demand? Coil { get; init; }

    /// <summary>Bus that feeds the coil; <see langword="null"/>: the feed's <c>from</c> bus.</summary>
    public string? CoilBus { get; init; }

    /// <summary>Of the closed contacts; zero or more.</summary>
    public Resistance ContactResistance { get; init; }
}
