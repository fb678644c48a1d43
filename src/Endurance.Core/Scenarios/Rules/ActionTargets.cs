using System.Collections.Immutable;
using Endurance.Components;

namespace Endurance.Scenarios.Rules;

/// <summary>Which verbs work on which parts.</summary>
internal sealed class ActionTargets
{
    private readonly Scenario _scenario;
    private readonly ImmutableArray<(string Name, string Kind)> _parts;

    public ActionTargets(Scenario scenario)
    {
        _scenario = scenario;
        _parts =
        [
            .. scenario.Batteries.Select(part => (part.Name, "battery")),
            .. scenario.Alternators.Select(part => (part.Name, "alternator")),
            .. scenario.Buses.Select(part => (part.Name, "bus")),
            .. scenario.Feeds.Select(part => (part.Name, "feed")),
            .. scenario.Loads.Select(part => (part.Name, "load")),
            .. scenario.Engines.Select(name => (name, "engine")),
            .. scenario.Chargers.Select(part => (part.Name, "charger")),
            .. scenario.Warnings.Select(part => (part.Name, "warning")),
            .. scenario.Selectors.Select(part => (part.Name, "selector")),
            .. scenario.Grounds.Select(part => (part.Name, "ground")),
        ];
    }

    /// <summary>As the file writes it.</summary>
    public static string Word(ActionVerb verb) => verb == ActionVerb.ShortCell ? "short_cell" : verb.ToString().ToLowerInvariant();

    public RuleFinding? FaultOf(TimelineAction action, string path)
    {
        if (action.Verb is ActionVerb.Open or ActionVerb.Close)
            return ContactFault(action, path);
        var kinds = KindsFor(action.Verb);
        var named = _parts.Where(part => string.Equals(part.Name, action.Target, StringComparison.Ordinal)).ToImmutableArray();
        if (named.IsEmpty)
            return UnknownTarget(path, action.Target, kinds);
        if (!named.Any(part => kinds.Contains(part.Kind, StringComparer.Ordinal)))
            return WrongKind(action, path, named[0].Kind, kinds);
        if (action.Verb == ActionVerb.ShortCell)
            return CellFault(action, path);
        if (action.Verb == ActionVerb.Select)
            return PositionFault(action, path);
        if (action.Verb != ActionVerb.Short || FeedNamed(action.Target) is not { Diode: null })
            return null;
        return RuleFinding.Error("no-diode-to-short", path, action.Target, $"the feed `{action.Target}` has no diode that could fail short", "a feed with a diode");
    }

    private RuleFinding? CellFault(TimelineAction action, string path) =>
        _scenario.Batteries.First(battery => string.Equals(battery.Name, action.Target, StringComparison.Ordinal)).Cells is null
            ? RuleFinding.Error("cells-unknown", path, action.Target, $"how many cells `{action.Target}` has is not known, so none can be shorted", "`cells` or a `chemistry` at the battery, such as `cells: 6`")
            : null;

    private RuleFinding? PositionFault(TimelineAction action, string path)
    {
        var positions = _scenario.Selectors.First(selector => string.Equals(selector.Name, action.Target, StringComparison.Ordinal)).Positions;
        return positions.Any(position => string.Equals(position.Position, action.Position, StringComparison.Ordinal))
            ? null
            : SelectorRules.UnknownPosition(path, action.Target, action.Position ?? "", positions);
    }

    private static ImmutableArray<string> KindsFor(ActionVerb verb) => verb switch
    {
        ActionVerb.Fail => ["alternator", "charger", "battery", "warning"],
        ActionVerb.Restore => ["alternator", "charger", "battery", "warning", "feed"],
        ActionVerb.Stop or ActionVerb.Start or ActionVerb.Idle or ActionVerb.Cruise => ["engine"],
        ActionVerb.Shed or ActionVerb.Connect => ["load", "alternator", "charger"],
        ActionVerb.Select => ["selector"],
        ActionVerb.ShortCell => ["battery"],
        _ => ["feed"],
    };

    private RuleFinding UnknownTarget(string path, string target, ImmutableArray<string> kinds)
    {
        ImmutableArray<string> known = [.. _parts.Where(part => kinds.Contains(part.Kind, StringComparer.Ordinal)).Select(part => part.Name)];
        return ReferenceRules.Unknown(path, target, Either(kinds), known);
    }

    private static RuleFinding WrongKind(TimelineAction action, string path, string kind, ImmutableArray<string> kinds)
    {
        var hint = (action.Verb, kind) switch
        {
            (ActionVerb.Fail, "feed") => "; to fail a feed use `break`, or `short` for its diode",
            (ActionVerb.Short, "battery") => "; a cell of a battery fails with `short_cell`",
            (ActionVerb.Fail, "load") => "; to switch a load off use `shed`",
            (ActionVerb.Fail, "selector") or (ActionVerb.Open or ActionVerb.Close, "selector") => "; a selector is turned with `select`",
            (ActionVerb.Open or ActionVerb.Close, "charger") => "; a charger has `shed` and `connect`",
            (ActionVerb.Fail, "engine") => "; to stop an engine use `stop`",
            (ActionVerb.Shed or ActionVerb.Connect, "feed") => "; a feed has `open` and `close`",
            _ => "",
        };
        return RuleFinding.Error(
            "wrong-target", path, action.Target,
            $"`{Word(action.Verb)}` does not work on `{action.Target}`, which is {Article(kind)} {kind}{hint}",
            $"the name of {Article(kinds[0])} {Either(kinds)}");
    }

    private static string Either(ImmutableArray<string> kinds) => kinds is [.. var first, var last] && !first.IsEmpty ? $"{string.Join(", ", first)} or {last}" : kinds[0];

    private static string Article(string kind) => kind[0] is 'a' or 'e' ? "an" : "a";

    private Feed? FeedNamed(string name) => _scenario.Feeds.FirstOrDefault(feed => string.Equals(feed.Name, name, StringComparison.Ordinal));

    private RuleFinding? ContactFault(TimelineAction action, string path)
    {
        var dot = action.Target.IndexOf('.', StringComparison.Ordinal);
        var feedName = dot < 0 ? action.Target : action.Target[..dot];
        if (FeedNamed(feedName) is not { } feed)
        {
            var other = _parts.FirstOrDefault(part => string.Equals(part.Name, feedName, StringComparison.Ordinal));
            if (other.Name is not null)
                return WrongKind(action with { Target = feedName }, path, other.Kind, ["feed"]);
            return ReferenceRules.Unknown(path, feedName, "feed", [.. _scenario.Feeds.Select(known => known.Name)]);
        }

        var contacts = ContactsOf(feed);
        if (dot >= 0)
            return contacts.Contains(action.Target[(dot + 1)..], StringComparer.Ordinal) ? null : NoSuchContact(feed, action, path, contacts);
        return contacts.Length == 1 ? null : NoSingleContact(feed, action, path, contacts);
    }

    private static ImmutableArray<string> ContactsOf(Feed feed)
    {
        var contacts = ImmutableArray.CreateBuilder<string>();
        if (feed.Contactor is not null)
            contacts.Add("contactor");
        if (feed.Switch is not null)
            contacts.Add("switch");
        if (feed.Breaker is not null)
            contacts.Add("breaker");
        return contacts.ToImmutable();
    }

    private static RuleFinding NoSuchContact(Feed feed, TimelineAction action, string path, ImmutableArray<string> contacts)
    {
        var part = action.Target[(feed.Name.Length + 1)..];
        var message = string.Equals(part, "fuse", StringComparison.Ordinal)
            ? $"a fuse cannot be worked by hand, so `{Word(action.Verb)}` does not work on `{action.Target}`"
            : $"the feed `{feed.Name}` has no `{part}` to {Word(action.Verb)}";
        return RuleFinding.Error("no-such-contact", path, action.Target, message, Choices(feed, contacts), NearestName.Find(action.Target, contacts.Select(contact => $"{feed.Name}.{contact}")));
    }

    private static RuleFinding NoSingleContact(Feed feed, TimelineAction action, string path, ImmutableArray<string> contacts) => contacts.IsEmpty
        ? RuleFinding.Error("no-such-contact", path, action.Target, $"the feed `{feed.Name}` has nothing to {Word(action.Verb)}", "a feed with a contactor, a switch or a breaker; or `break`, which opens any feed")
        : RuleFinding.Error("ambiguous-contact", path, action.Target, $"the feed `{feed.Name}` has several contacts to {Word(action.Verb)}: {string.Join(", ", contacts)}", Choices(feed, contacts));

    private static string Choices(Feed feed, ImmutableArray<string> contacts) =>
        contacts.IsEmpty ? "a feed with a contactor, a switch or a breaker" : string.Join(" or ", contacts.Select(contact => $"{feed.Name}.{contact}"));
}
