using Endurance.Components;
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
        AlternatorTripped = new bool[network.Alternators.Length];
        FieldOn = [.. scenario.Alternators.Select(alternator => alternator.Field?.IsOn ?? true)];
        ChargerOn = [.. scenario.Chargers.Select(charger => charger.IsOn)];
        ChargerFailed = new bool[network.Chargers.Length];
        ChargerRunning = [.. network.Chargers.Select(charger => double.IsNegativeInfinity(charger.CutIn))];
        EngineIdle = [.. scenario.Engines.Select(_ => false)];
        EngineRunning = [.. scenario.Engines.Select(_ => true)];
        ContactorClosed = [.. scenario.Feeds.Select(feed => feed.Contactor?.IsClosed ?? true)];
        SwitchClosed = [.. scenario.Feeds.Select(feed => feed.Switch?.IsClosed ?? true)];
        BreakerClosed = [.. scenario.Feeds.Select(feed => feed.Breaker?.IsClosed ?? true)];
        FuseIntact = [.. scenario.Feeds.Select(feed => feed.Fuse?.IsClosed ?? true)];
        LinkIntact = [.. scenario.Feeds.Select(feed => feed.FusibleLink?.IsClosed ?? true)];
        Selected = Selections(scenario);
        CoilPulledIn = [.. network.Coils.Select(coil => IsEnergised(coil))];
        LoadProtected = [.. scenario.Loads.Select(load => (load.Breaker?.IsClosed ?? true) && (load.Fuse?.IsClosed ?? true))];
        InrushUntil = new double[network.Loads.Length];
        Array.Fill(InrushUntil, double.NaN);
        FeedBroken = new bool[network.Feeds.Length];
        DiodeShorted = new bool[network.Feeds.Length];
        LoadConnected = [.. scenario.Loads.Select(load => load.IsOn)];
        LoadDropped = new bool[network.Loads.Length];
        Conducting = new bool[network.Feeds.Length];
        Array.Fill(Conducting, true);
        Energised = new bool[network.NodeCount];
        Backed = new bool[network.NodeCount];
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

    /// <summary>Taken off by its over-voltage relay.</summary>
    public bool[] AlternatorTripped { get; }

    public bool[] FieldOn { get; }

    public bool[] ChargerOn { get; }

    public bool[] ChargerFailed { get; }

    /// <summary>Its input voltage has passed the cut-in and not fallen below the cut-out since.</summary>
    public bool[] ChargerRunning { get; }

    public bool[] EngineIdle { get; }

    public bool[] EngineRunning { get; }

    /// <summary>As commanded; what the contacts do follows the coil where its voltages are given.</summary>
    public bool[] ContactorClosed { get; }

    /// <summary>By coil: the armature has moved.</summary>
    public bool[] CoilPulledIn { get; }

    public bool[] SwitchClosed { get; }

    public bool[] BreakerClosed { get; }

    public bool[] FuseIntact { get; }

    public bool[] LinkIntact { get; }

    /// <summary>No selector keeps the feed open.</summary>
    public bool[] Selected { get; }

    /// <summary>By load: its own breaker and fuse are closed.</summary>
    public bool[] LoadProtected { get; }

    /// <summary>Seconds until which a load draws its inrush; NaN when it does not.</summary>
    public double[] InrushUntil { get; }

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

    /// <summary>Whether a battery that is joined to its bus reaches this one; made by <see cref="Refresh"/>.</summary>
    public bool[] Backed { get; }

    public bool LoadDraws(int load) => LoadConnected[load] && !LoadDropped[load] && LoadProtected[load];

    /// <summary>What a load draws by now: its inrush, or its steady demand.</summary>
    public CompiledDemand DemandOf(int load) =>
        double.IsNaN(InrushUntil[load]) ? network.Loads[load].Demand : network.Loads[load].Inrush!;

    /// <summary>Whether a contactor's coil is switched on.</summary>
    public bool IsEnergised(CompiledCoil coil) => ContactorClosed[coil.Feed] != coil.IsNormallyClosed;

    public bool IsClosed(CompiledBreaker breaker) => ClosedOf(breaker)[Math.Max(breaker.Feed, breaker.Load)];

    public void Trip(CompiledBreaker breaker) => ClosedOf(breaker)[Math.Max(breaker.Feed, breaker.Load)] = false;

    public bool DrawsField(int alternator) => AlternatorOn[alternator] && FieldOn[alternator];

    public bool Charges(int charger) =>
        ChargerOn[charger] && !ChargerFailed[charger] && ChargerRunning[charger] && Energised[network.Chargers[charger].From];

    /// <summary>Whether the battery is joined to its bus at all.</summary>
    public bool IsJoined(int battery) => !BatteryFailed[battery] && !BatteryOpen[battery];

    public bool CanSupply(int battery) => IsJoined(battery) && !BatteryExhausted[battery];

    public bool Generates(int alternator)
    {
        var engine = network.Alternators[alternator].Engine;
        var field = network.Alternators[alternator].FieldNode;
        return AlternatorOn[alternator] && !AlternatorFailed[alternator] && !AlternatorTripped[alternator]
            && (engine < 0 || EngineRunning[engine]) && (field < 0 || (FieldOn[alternator] && Energised[field]));
    }

    /// <summary>Whether an alternator would generate if only its field's bus had volts.</summary>
    public bool LacksField(int alternator)
    {
        var compiled = network.Alternators[alternator];
        return compiled.FieldNode >= 0 && FieldOn[alternator] && !Energised[compiled.FieldNode]
            && AlternatorOn[alternator] && !AlternatorFailed[alternator] && !AlternatorTripped[alternator]
            && (compiled.Engine < 0 || EngineRunning[compiled.Engine]);
    }

    /// <summary>Amperes that an alternator can give at its engine's present speed.</summary>
    public double LimitOf(int alternator)
    {
        var compiled = network.Alternators[alternator];
        return compiled.Engine >= 0 && EngineIdle[compiled.Engine] ? compiled.LimitIdle : compiled.Limit;
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
        for (var i = 0; i < network.ListedFeeds; i++)
            Conducting[i] = SwitchClosed[i] && BreakerClosed[i] && FuseIntact[i] && LinkIntact[i] && Selected[i] && !FeedBroken[i];
        for (var i = 0; i < network.Coils.Length; i++)
        {
            var coil = network.Coils[i];
            if (!coil.FollowsVoltage)
                CoilPulledIn[i] = IsEnergised(coil);
            Conducting[coil.Feed] &= CoilPulledIn[i] != coil.IsNormallyClosed;
        }

        Array.Clear(Energised);
        Energised.AsSpan(network.FirstGround).Fill(true);
        for (var i = 0; i < network.Batteries.Length; i++)
            Energised[network.Batteries[i].Node] |= CanSupply(i);
        while (SpreadOnce())
        {
            // until nothing reaches a further bus
        }

        Array.Clear(Backed);
        for (var i = 0; i < network.Batteries.Length; i++)
            Backed[network.Batteries[i].Node] |= IsJoined(i);
        while (SpreadAlongFeeds(Backed))
        {
            // until no battery reaches a further bus
        }
    }

    private bool SpreadOnce()
    {
        var spread = false;
        for (var i = 0; i < network.Alternators.Length; i++)
        {
            if (!Energised[network.Alternators[i].Node] && Generates(i))
                spread = Energised[network.Alternators[i].Node] = true;
        }

        for (var i = 0; i < network.Chargers.Length; i++)
        {
            if (!Energised[network.Chargers[i].To] && Charges(i))
                spread = Energised[network.Chargers[i].To] = true;
        }

        return SpreadAlongFeeds(Energised) || spread;
    }

    private bool SpreadAlongFeeds(bool[] reached)
    {
        var spread = false;
        for (var i = 0; i < Conducting.Length; i++)
        {
            if (!Conducting[i])
                continue;
            var feed = network.Feeds[i];
            if (reached[feed.From] && !reached[feed.To])
                spread = reached[feed.To] = true;
            else if (reached[feed.To] && !reached[feed.From] && (!feed.HasDiode || DiodeShorted[i]))
                spread = reached[feed.From] = true;
        }

        return spread;
    }

    private bool[] ClosedOf(CompiledBreaker breaker) => breaker.Load >= 0 ? LoadProtected : breaker.Kind switch
    {
        ProtectionKind.Breaker => BreakerClosed,
        ProtectionKind.Fuse => FuseIntact,
        _ => LinkIntact,
    };

    private static bool[] Selections(Scenario scenario) =>
        [.. scenario.Feeds.Select(feed => scenario.Selectors.All(selector =>
            selector.Positions.All(position => !string.Equals(position.Feed, feed.Name, StringComparison.Ordinal)
                || string.Equals(position.Position, selector.At, StringComparison.Ordinal))))];
}
