using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>What a feed carried in a run; current is positive from its <c>from</c> bus to its <c>to</c> bus.</summary>
public sealed record FeedOutcome
{
    public required string Name { get; init; }

    /// <summary>After all steps at zero have settled.</summary>
    public required Current StartCurrent { get; init; }

    public required Current HighestCurrent { get; init; }

    public required Current LowestCurrent { get; init; }

    /// <summary>Heat in the diode at its worst instant; <see langword="null"/> without a diode.</summary>
    public required Power? HighestDiodePower { get; init; }

    /// <summary>Junction temperature at its worst instant; <see langword="null"/> without a junction diode.</summary>
    public required Temperature? HighestJunction { get; init; }

    /// <summary>Integral of the current from <c>to</c> to <c>from</c>, as a positive amount.</summary>
    public required Charge ReverseCharge { get; init; }
}
