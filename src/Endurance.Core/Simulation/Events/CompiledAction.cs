using Endurance.Scenarios;

namespace Endurance.Simulation.Events;

/// <summary>What kind of part an action is aimed at.</summary>
internal enum TargetKind
{
    Battery,
    Alternator,
    Engine,
    Load,
    Charger,
    Warning,
    Selector,
    Feed,
    Contactor,
    Switch,
    Breaker,
}

/// <summary>One verb on one part, by index.</summary>
/// <param name="Verb">What is done.</param>
/// <param name="Kind">Kind of part.</param>
/// <param name="Index">Index into the parts of that kind; the feed's for a part of a feed.</param>
/// <param name="Name">As the scenario wrote it.</param>
/// <param name="Position">For a selector, where it is turned.</param>
internal sealed record CompiledAction(ActionVerb Verb, TargetKind Kind, int Index, string Name, string? Position = null)
{
    /// <summary>For a selector: which of its feeds it closes and opens.</summary>
    public (int Feed, bool Closed)[] Selection { get; init; } = [];

    /// <summary>Whether the action shows that somebody has recognised the failure and acts.</summary>
    public bool IsRecognition => Verb is ActionVerb.Open or ActionVerb.Close or ActionVerb.Shed or ActionVerb.Connect
        or ActionVerb.Start or ActionVerb.Restore or ActionVerb.Select;

    public bool OpensFeed => Verb is ActionVerb.Open or ActionVerb.Break or ActionVerb.Select;
}
