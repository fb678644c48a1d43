using System.Collections.Immutable;

namespace Endurance.Reports.Html;

/// <summary>What nobody may take this report for.</summary>
internal static class NotCovered
{
    public static ImmutableArray<string> All { get; } =
    [
        "Anything that the scenario does not describe: a load, a wire or a connection that was left out is not in any number.",
        "Transients shorter than about a second: load dump, contactor bounce, inrush of capacitors, cranking.",
        "Two failures at once, other than a single part on top of a written failure case; common causes such as fire, water, vibration or one connector.",
        "Intermittent contacts, corrosion and joints of rising resistance.",
        "Batteries that heat or cool during the run: each stays at the temperature given. Ageing is in the health that was typed, nothing else.",
        "Radio interference, lightning and the behaviour of software inside equipment.",
        "Whether the installation meets the rules that apply to it.",
    ];
}
