using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;

namespace Endurance.Studies.Wiring;

/// <summary>Tells the type of a load from its name and its draw.</summary>
internal static class LoadTypeGuess
{
    private static readonly string[] Lamps = ["light", "lamp", "strobe", "beacon"];
    private static readonly string[] Motors = ["motor", "pump", "starter", "flap", "gear", "fan", "blower", "servo", "trim", "autopilot"];
    private static readonly string[] Coils = ["relay", "contactor", "solenoid", "valve", "coil", "ignition"];

    public static LoadType Of(Load load)
    {
        if (Names(load, Motors))
            return LoadType.Motor;
        if (Names(load, Lamps))
            return LoadType.Lamp;
        return Names(load, Coils) ? LoadType.Inductive : LoadType.Resistive;
    }

    /// <summary>The type that asks most of a switch.</summary>
    public static LoadType Hardest(IEnumerable<LoadType> types, Voltage nominal) =>
        types.DefaultIfEmpty(LoadType.Resistive).MaxBy(type => SwitchDerating.Factor(type, nominal));

    private static bool Names(Load load, string[] words) => Array.Exists(words, word => load.Name.Contains(word, StringComparison.OrdinalIgnoreCase));
}
