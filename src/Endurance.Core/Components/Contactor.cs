using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A relay; its coil draws current while it holds the contacts out of their place of rest.</summary>
public sealed record Contactor
{
    public required bool IsClosed { get; init; }

    /// <summary>What the coil draws; <see langword="null"/>: no coil current is modelled. Either <see cref="ConstantCurrent"/> or <see cref="ConstantResistance"/>.</summary>
    public Demand? Coil { get; init; }

    /// <summary>Bus that feeds the coil; <see langword="null"/>: the feed's <c>from</c> bus.</summary>
    public string? CoilBus { get; init; }

    /// <summary>Of the closed contacts; zero or more.</summary>
    public Resistance ContactResistance { get; init; }

    /// <summary>Drawn until the contacts have moved; <see langword="null"/>: the same as <see cref="Coil"/>.</summary>
    public Current? PullInCurrent { get; init; }

    /// <summary>Coil voltage above which an energised coil moves the contacts; <see langword="null"/>: any.</summary>
    public Voltage? PullsInAbove { get; init; }

    /// <summary>Coil voltage below which the contacts fall back; <see langword="null"/>: never. Not above <see cref="PullsInAbove"/>.</summary>
    public Voltage? DropsOutBelow { get; init; }

    /// <summary>The contacts are closed while the coil is not energised.</summary>
    public bool IsNormallyClosed { get; init; }
}
