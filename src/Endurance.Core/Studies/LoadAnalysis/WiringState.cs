using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>Which contacts are closed, which loads are on and which sources give, step by step, without any volts.</summary>
internal sealed class WiringState
{
    private readonly Scenario scenario;
    private readonly HashSet<string> on;
    private readonly HashSet<string> open = new(StringComparer.Ordinal);
    private readonly HashSet<string> failed = new(StringComparer.Ordinal);
    private readonly HashSet<string> shorted = new(StringComparer.Ordinal);

    /// <summary>As drawn.</summary>
    public WiringState(Scenario scenario)
    {
        this.scenario = scenario;
        on = [.. scenario.Loads.Where(load => load.IsOn).Select(load => load.Name)];
        on.UnionWith(scenario.Alternators.Where(alternator => alternator.IsOn).Select(alternator => alternator.Name));
        on.UnionWith(scenario.Chargers.Where(charger => charger.IsOn).Select(charger => charger.Name));
        foreach (var feed in scenario.Feeds)
        {
            foreach (var (part, isClosed) in Contacts(feed))
            {
                if (!isClosed)
                    open.Add($"{feed.Name}.{part}");
            }
        }

        foreach (var selector in scenario.Selectors)
            Select(selector, selector.At);
    }

    public bool IsOn(string name) => on.Contains(name);

    public bool Gives(Alternator alternator) =>
        on.Contains(alternator.Name) && !failed.Contains(alternator.Name) && !failed.Contains(alternator.DrivenBy ?? "");

    public bool Gives(Battery battery) => !failed.Contains(battery.Name);

    /// <summary>The contactor's coil draws.</summary>
    public bool IsEnergised(Feed feed) => feed.Contactor is { } contactor && !open.Contains($"{feed.Name}.contactor") != contactor.IsNormallyClosed;

    /// <summary>Buses that current from a bus can get to.</summary>
    public HashSet<string> ReachedFrom(IEnumerable<string> buses)
    {
        HashSet<string> reached = [.. buses];
        var before = -1;
        while (before < reached.Count)
        {
            before = reached.Count;
            foreach (var feed in scenario.Feeds.Where(Conducts))
            {
                if (reached.Contains(feed.From))
                    reached.Add(feed.To);
                if (reached.Contains(feed.To) && (feed.Diode is null || shorted.Contains(feed.Name)))
                    reached.Add(feed.From);
            }

            foreach (var charger in scenario.Chargers.Where(charger => on.Contains(charger.Name) && !failed.Contains(charger.Name) && reached.Contains(charger.From)))
                reached.Add(charger.To);
        }

        return reached;
    }

    public void Apply(TimelineAction action)
    {
        switch (action.Verb)
        {
            case ActionVerb.Connect:
                on.Add(action.Target);
                break;
            case ActionVerb.Shed:
                on.Remove(action.Target);
                break;
            case ActionVerb.Open:
                open.Add(Contact(action.Target));
                break;
            case ActionVerb.Close:
                open.Remove(Contact(action.Target));
                break;
            case ActionVerb.Fail or ActionVerb.Stop or ActionVerb.Break:
                failed.Add(action.Target);
                break;
            case ActionVerb.Restore or ActionVerb.Start:
                failed.Remove(action.Target);
                shorted.Remove(action.Target);
                break;
            case ActionVerb.Short:
                shorted.Add(action.Target);
                break;
            case ActionVerb.Select:
                Select(scenario.Selectors.First(selector => string.Equals(selector.Name, action.Target, StringComparison.Ordinal)), action.Position!);
                break;
            default:
                break;
        }
    }

    private bool Conducts(Feed feed) =>
        !failed.Contains(feed.Name) && !open.Contains(feed.Name) && Contacts(feed).All(contact => !open.Contains($"{feed.Name}.{contact.Part}"));

    /// <summary>A selector opens all its feeds but one.</summary>
    private void Select(Selector selector, string position)
    {
        foreach (var (name, feed) in selector.Positions)
        {
            if (string.Equals(name, position, StringComparison.Ordinal))
                open.Remove(feed);
            else
                open.Add(feed);
        }
    }

    /// <summary>The one contact of a feed that an action names by the feed alone.</summary>
    private string Contact(string target)
    {
        var feed = scenario.Feeds.FirstOrDefault(feed => string.Equals(feed.Name, target, StringComparison.Ordinal));
        return feed is null ? target : $"{target}.{Contacts(feed).First().Part}";
    }

    private static IEnumerable<(string Part, bool IsClosed)> Contacts(Feed feed)
    {
        if (feed.Contactor is { } contactor)
            yield return ("contactor", contactor.IsClosed);
        if (feed.Switch is { } hand)
            yield return ("switch", hand.IsClosed);
        if (feed.Breaker is { } breaker)
            yield return ("breaker", breaker.IsClosed);
        if (feed.Fuse is { } fuse)
            yield return ("fuse", fuse.IsClosed);
    }
}
