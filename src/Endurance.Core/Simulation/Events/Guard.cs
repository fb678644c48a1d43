namespace Endurance.Simulation.Events;

/// <summary>A signed condition: not negative while nothing is due, negative once something is.</summary>
/// <param name="Kind">What is watched.</param>
/// <param name="Index">Index of the battery, load, bus or step.</param>
internal readonly record struct Guard(GuardKind Kind, int Index);
