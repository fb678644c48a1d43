using Endurance.Scenarios;

namespace Endurance.Simulation;

/// <summary>The discrete state of one run: what is on, closed, failed or dropped. The only mutable part besides the charges.</summary>
internal sealed class RunState
{
    private readonly CompiledNetwork network;

    public RunState(CompiledNetwork network, Scenario scenario)
    {
        this.network = network;
        BatteryFailed = new bool[network.Batteries.Length];
        BatteryExhausted = new bool[network.Batteries.Length];
        BatteryOpen = new bool[network.Batteries.Length];
        WholeCells = new double[network.Batteries.Length];
        Array.Fill(WholeCells, 1);
        BatterySegment = new int[network.Batteries.Length];
        BatteryModes = new BatteryMode[network.Batteries.Length];
        AlternatorOn = [.. scenario.Alternators.Select(alternator => alternator.IsOn)];
        AlternatorFailed = new bool[network.Alternators.Length];
        EngineRunning = [.. scenario.Engines.Select(_ => true)];
        ContactorClosed = [.. scenario.Feeds.Select(feed => feed.Contactor?.IsClosed ?? true)];
        SwitchClosed = [.. scenario.Feeds.Select(feed => feed.Switch?.IsClosed ?? true)];
        BreakerClosed = [.. scenario.Feeds.Select(feed => feed.Breaker?.IsClosed ?? true)];
        FuseIntact = [.. scenario.Feeds.Select(feed => feed.Fuse?.IsClosed ?? true)];
        FeedBroken = new bool[network.Feeds.Length];
        DiodeShorted = new bool[network.Feeds.Length];
        LoadConnected = [.. scenario.Loads.Select(load => load.IsOn)];
        LoadDropped = new bool[network.Loads.Length];
        Conducting = new bool[network.Feeds.Length];
        Energised = new bool[network.BusCount];
        Refresh();
    }

    public bool[] BatteryFailed { get; }

    public bool[] BatteryExhausted { get; }

    /// <summary>Its own protection has opened.</summary>
    public bool[] BatteryOpen { get; }

    /// <summary>Share of the battery's cells that are not shorted.</summary>
    public double[] WholeCells { get; }

    public int[] BatterySegment { get; }

    public BatteryMode[] BatteryModes { get; }

    public bool[] AlternatorOn { get; }

    public bool[] AlternatorFailed { get; }

    public bool[] EngineRunning { get; }

    public bool[] ContactorClosed { get; }

    public bool[] SwitchClosed { get; }

    public bool[] BreakerClosed { get; }

    public bool[] FuseIntact { get; }

    public bool[] FeedBroken { get; }

    public bool[] DiodeShorted { get; }

    /// <summary>As commanded; a dropped load is still connected.</summary>
    public bool[] LoadConnected { get; }

    /// <summary>Stopped for want of voltage: draws nothing until it restarts.</summary>
    public bool[] LoadDropped { get; }

    /// <summary>Whether every part of the feed conducts; made by <see cref="Refresh"/>.</summary>
    public bool[] Conducting { get; }

    /// <summary>Whether a source reaches the bus; made by <see cref="Refresh"/>.</summary>
    public bool[] Energised { get; }

    public bool LoadDraws(int load) => LoadConnected[load] && !LoadDropped[load];

    /// <summary>Whether the battery is joined to its bus at all.</summary>
    public bool IsJoined(int battery) => !BatteryFailed[battery] && !BatteryOpen[battery];

    public bool CanSupply(int battery) => IsJoined(battery) && !BatteryExhausted[battery];

    public bool Generates(int alternator)
    {
        var engine = network.Alternators[alternator].Engine;
        return AlternatorOn[alternator] && !AlternatorFailed[alternator] && (engine < 0 || EngineRunning[engine]);
    }

    public bool AnySource()
    {
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            if (CanSupply(i))
                return true;
        }

        return AnyAlternator();
    }

    /// <summary>Whether any alternator generates.</summary>
    public bool AnyAlternator()
    {
        for (var i = 0; i < network.Alternators.Length; i++)
        {
            if (Generates(i))
                return true;
        }

        return false;
    }

    /// <summary>Works out what conducts and what is energised after any change of the rest.</summary>
    public void Refresh()
    {
        for (var i = 0; i < Conducting.Length; i++)
            Conducting[i] = ContactorClosed[i] && SwitchClosed[i] && BreakerClosed[i] && FuseIntact[i] && !FeedBroken[i];
        Array.Clear(Energised);
        for (var i = 0; i < network.Batteries.Length; i++)
            Energised[network.Batteries[i].Node] |= CanSupply(i);
        for (var i = 0; i < network.Alternators.Length; i++)
            Energised[network.Alternators[i].Node] |= Generates(i);
        while (SpreadOnce())
        {
            // until no feed reaches a further bus
        }
    }

    private bool SpreadOnce()
    {
        var spread = false;
        for (var i = 0; i < Conducting.Length; i++)
        {
            if (!Conducting[i])
                continue;
            var feed = network.Feeds[i];
            if (Energised[feed.From] && !Energised[feed.To])
                spread = Energised[feed.To] = true;
            else if (Energised[feed.To] && !Energised[feed.From] && (!feed.HasDiode || DiodeShorted[i]))
                spread = Energised[feed.From] = true;
        }

        return spread;
    }
}
