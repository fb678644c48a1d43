using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>How much more than its load a switch must be rated for.</summary>
public static class SwitchDerating
{
    /// <summary>Where every factor comes from.</summary>
    public const string Source = "FAA AC 43.13-1B, table 11-4, page 11-17";

    private const double BetweenSystems = 20;

    /// <summary>Needed switch rating over load current: the 12 V column below 20 V, the 28 V column above.</summary>
    public static double Factor(LoadType type, Voltage nominal) => (type, nominal.Volts > BetweenSystems) switch
    {
        (LoadType.Lamp, true) => 8,
        (LoadType.Lamp, false) => 5,
        (LoadType.Inductive, true) => 4,
        (LoadType.Inductive, false) => 2,
        (LoadType.Resistive, true) => 2,
        (LoadType.Resistive, false) => 1,
        (LoadType.Motor, true) => 3,
        (LoadType.Motor, false) => 2,
        _ => throw new ArgumentOutOfRangeException(nameof(type), type, "Unknown type of load."),
    };
}
