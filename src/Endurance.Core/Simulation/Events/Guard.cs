namespace Endurance.Simulation.Events;

/// <summary>A signed condition: not negative while nothing is due, negative once something is.</summary>
/// <param name="Kind">What is watched.</param>
/// <param name="Index">Index of the battery, load, bus or step.</param>
internal readonly record struct Guard(GuardKind Kind, int Index)
{
    /// <summary>Whether it watches a battery.</summary>
    public bool IsOfBattery => Kind <= GuardKind.BatteryCurrentAbove;

    /// <summary>Whether what is due changes the laws of a battery and nothing in the network.</summary>
    public bool IsOfBatteryAlone => Kind is GuardKind.BatteryKnotBelow or GuardKind.BatteryKnotAbove or GuardKind.BatteryFull
        or GuardKind.BatteryBelowFull or GuardKind.BatteryCurrentBelow or GuardKind.BatteryCurrentAbove;
}
