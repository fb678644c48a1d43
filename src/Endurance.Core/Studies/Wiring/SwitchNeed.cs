using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Studies.Wiring;

/// <summary>What a switch in a branch must be rated for.</summary>
/// <param name="Type">Of the load behind it.</param>
/// <param name="IsGuess">Nobody said what the load is; it was told from its name and its draw.</param>
/// <param name="Rating">Steady current times the factor for the type.</param>
public sealed record SwitchNeed(LoadType Type, bool IsGuess, Current Rating);
