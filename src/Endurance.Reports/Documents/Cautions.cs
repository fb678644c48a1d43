using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>What every full report says about its own limits.</summary>
public static class Cautions
{
    /// <summary>Sentences, in order.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "These numbers support your judgement; they certify nothing.",
        "Prove them on the ground: run the battery down with the real loads and a watch, before flight depends on them.",
        "The equipment makers' instructions, the rules where you fly and a licensed person's judgement come before this report.",
        "Batteries and wiring can burn: protect every wire at its source, and charge each battery as its maker says.",
        "Transients shorter than about a second (load dump, contactor bounce, inrush of capacitors) are not modelled.",
    ];
}
