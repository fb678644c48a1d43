using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Feeds with something wrong.</summary>
internal static class FaultyFeeds
{
    public static Fault Open(Feed feed) => new()
    {
        Kind = FaultKind.FeedOpen,
        Part = feed.Name,
        Label = $"{feed.Name} does not carry",
        Applied = setup => setup.With(ActionVerb.Break, feed.Name),
    };

    public static Fault DiodeShorted(Feed feed) => new()
    {
        Kind = FaultKind.DiodeShorted,
        Part = feed.Name,
        Label = $"the diode of {feed.Name} is shorted or bridged",
        Applied = setup => setup.With(ActionVerb.Short, feed.Name),
    };

    /// <summary>Current is still counted from the feed's <c>from</c> to its <c>to</c>.</summary>
    public static Fault DiodeReversed(Feed feed) => new()
    {
        Kind = FaultKind.DiodeReversed,
        Part = feed.Name,
        Label = $"the diode of {feed.Name} is in backwards",
        Applied = setup => Changed(setup, feed.Name, drawn => drawn with
        {
            From = drawn.To,
            To = drawn.From,
            Contactor = drawn.Contactor is { } contactor ? contactor with { CoilBus = contactor.CoilBus ?? drawn.From } : null,
        }),
        Shown = (reading, value) => reading.Kind == ReadingKind.FeedAmperes && Is(reading.Part, feed.Name) ? -value : value,
    };

    public static Fault ContactStuck(Feed feed) => new()
    {
        Kind = FaultKind.ContactStuck,
        Part = feed.Name,
        Label = $"the contact of {feed.Name} does not open",
        Applied = setup => Stuck(setup, feed.Name),
    };

    /// <param name="feed">The feed.</param>
    /// <param name="excess">Above zero.</param>
    public static Fault JointResistance(Feed feed, Resistance excess) => new()
    {
        Kind = FaultKind.JointResistance,
        Part = feed.Name,
        Label = $"a joint of high resistance is in {feed.Name}",
        Value = FormattableString.Invariant($"{excess.Ohms * 1e3:0} mohm"),
        Applied = setup => Changed(setup, feed.Name, drawn => drawn with
        {
            Resistor = new SeriesResistor((drawn.Resistor?.Resistance ?? default) + excess, null),
        }),
    };

    /// <summary>The contact that a card would have opened. A contactor that is welded has no current in its coil, so it is left out rather than closed.</summary>
    private static TestSetup Stuck(TestSetup setup, string name)
    {
        var contact = "";
        bool Moves(TimelineAction action) => action.Verb is ActionVerb.Open or ActionVerb.Close && (Is(action.Target, name) || Is(action.Target, contact));
        var welded = Changed(setup, name, drawn =>
        {
            contact = $"{name}.{(drawn.Switch is not null ? "switch" : drawn.Contactor is not null ? "contactor" : "breaker")}";
            return drawn switch
            {
                { Switch: { } made } => drawn with { Switch = made with { IsClosed = true } },
                { Contactor: { } contactor } => contactor.IsClosed && !setup.Steps.Any(Moves) ? drawn : drawn with { Contactor = null },
                { Breaker: { } breaker } => drawn with { Breaker = breaker with { IsClosed = true } },
                { Fuse: { } fuse } => drawn with { Fuse = fuse with { IsClosed = true } },
                _ => drawn,
            };
        });
        return welded with { Steps = [.. welded.Steps.Where(action => !Moves(action))] };
    }

    private static TestSetup Changed(TestSetup setup, string name, Func<Feed, Feed> change) => setup with
    {
        Scenario = setup.Scenario with { Feeds = [.. setup.Scenario.Feeds.Select(feed => Is(feed.Name, name) ? change(feed) : feed)] },
    };

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
