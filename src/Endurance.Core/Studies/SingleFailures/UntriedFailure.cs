using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Studies.SingleFailures;

/// <summary>A failure that a part can have, and that the scenario says too little about to be tried.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Mode">How it would fail.</param>
/// <param name="Why">What is not known, and what to give.</param>
public sealed record UntriedFailure(string Part, FailureMode Mode, string Why)
{
    /// <summary>In the order of the scenario.</summary>
    public static ImmutableArray<UntriedFailure> Of(Scenario scenario) =>
    [
        .. scenario.Batteries.Where(battery => battery.Cells is null).Select(battery => new UntriedFailure(
            battery.Name, FailureMode.ShortedCell, $"A shorted cell of {battery.Name} is not tried: how many cells it has is not known. Give cells or a chemistry.")),
    ];
}
