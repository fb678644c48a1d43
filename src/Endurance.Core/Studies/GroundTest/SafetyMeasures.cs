using System.Collections.Immutable;

namespace Endurance.Studies.GroundTest;

/// <summary>What keeps people and aircraft whole during a ground test.</summary>
internal static class SafetyMeasures
{
    public static ImmutableArray<string> All { get; } =
    [
        "Batteries and wiring can burn: test outdoors or with doors open, a fire extinguisher within reach, and a way to get each battery off at once.",
        "One person has a hand on the master and watches nothing else; another one reads the meters and writes.",
        "Switch off first and ask afterwards: at any smell, smoke, heat, noise, or reading past an abort limit.",
        "Treat the propeller as live whenever a magneto, an ignition or the starter has power; keep clear of its arc, wheels chocked.",
        "No ring, watch strap or loose tool near a battery; cover the terminal that you are not working on.",
        "Any wire that is off has its end insulated before power comes on, and a tag until it is back.",
        "Charging gives off gas: no flame, and air, around lead-acid batteries. Never charge a lithium battery below the temperature its maker allows.",
        "At the end everything goes back as it was: a second person checks each feed that was opened and each battery that was off.",
    ];
}
