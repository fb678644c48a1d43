using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Studies.Sizing;

/// <summary>One value tried.</summary>
/// <param name="Value">In the SI unit of what is varied.</param>
/// <param name="Passes">Every requirement is met in every case.</param>
/// <param name="Margin">Least endurance over what is required, as a ratio; positive infinity when nothing is lost within the horizon.</param>
/// <param name="Endurance">Endurance of the requirement with the least margin; <see langword="null"/>: nothing is lost within the horizon.</param>
/// <param name="Case">The case that decides.</param>
/// <param name="LimitedBy">What is lost first there; <see langword="null"/> when nothing is.</param>
/// <param name="Required">What the requirement that decides asks for; <see langword="null"/> when none is near failing.</param>
public sealed record Trial(double Value, bool Passes, double Margin, Duration? Endurance, string Case, string? LimitedBy, Duration? Required)
{
    /// <summary>Least endurance over the cases of each requirement, in the order of the scenario; <see langword="null"/>: not lost within the horizon.</summary>
    public ImmutableArray<Duration?> ByRequirement { get; init; } = [];

    /// <summary>Of the first case that could not be run to its end, which fails the trial; <see langword="null"/> when all could.</summary>
    public BreakOff? BreakOff { get; init; }

    /// <summary>Of the case that decides, from where on nothing of it is known; <see langword="null"/> when it could be run to its end.</summary>
    public BreakOff? DecidingBreakOff { get; init; }
}
