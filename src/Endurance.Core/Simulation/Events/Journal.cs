using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Simulation.Events;

/// <summary>What happened in a run: the events in words, and the first and last losses of every bus, load and battery.</summary>
internal sealed class Journal
{
    /// <summary>
    /// A run with more events than this is switching back and forth, not flying: a display that starts again every minute of a day makes
    /// three thousand, and three of them, each second for an hour, twenty thousand.
    /// </summary>
    private const int MostEvents = 20_000;

    private readonly CompiledNetwork network;
    private readonly List<TimedEvent> events = [];

    public Journal(CompiledNetwork network)
    {
        this.network = network;
        BusFirst = Empty(network.BusCount);
        BusLast = Empty(network.BusCount);
        LoadFirst = Empty(network.Loads.Length);
        LoadLast = Empty(network.Loads.Length);
        LoadShed = Empty(network.Loads.Length);
        LoadReason = new LossReason?[network.Loads.Length];
        LoadEverConnected = new bool[network.Loads.Length];
        Exhaustion = Empty(network.Batteries.Length);
        Opened = Empty(network.Breakers.Length);
        OpenedAt = Empty(network.Breakers.Length);
    }

    public IReadOnlyList<TimedEvent> Events => events;

    /// <summary>Seconds of the first crossing below the cutoff; NaN when none.</summary>
    public double[] BusFirst { get; }

    /// <summary>Seconds of the last crossing that was not made good; NaN when none.</summary>
    public double[] BusLast { get; }

    public double[] LoadFirst { get; }

    public double[] LoadLast { get; }

    /// <summary>Seconds at which the load was switched off and stayed off; NaN when it is on.</summary>
    public double[] LoadShed { get; }

    public LossReason?[] LoadReason { get; }

    public bool[] LoadEverConnected { get; }

    public double[] Exhaustion { get; }

    /// <summary>Seconds at which a breaker, fuse or fusible link first opened of itself; NaN when it did not.</summary>
    public double[] Opened { get; }

    /// <summary>Amperes that opened it; NaN when it did not open.</summary>
    public double[] OpenedAt { get; }

    /// <summary>Seconds of the first recognising step after zero; NaN when none was carried out.</summary>
    public double Recognition { get; set; } = double.NaN;

    public void Note(double t, EventKind kind, string part, string what)
    {
        if (events.Count >= MostEvents)
            throw new BrokenOffException(BreakOff.OfSlowChatter(Switching(part), t, MostEvents));
        events.Add(new TimedEvent(Duration.FromSeconds(t), kind, part, what));
    }

    public void BusFell(double t, int bus)
    {
        if (double.IsNaN(BusFirst[bus]))
            BusFirst[bus] = t;
        BusLast[bus] = t;
        var cutoff = Voltage.FromVolts(network.Cutoffs[bus]);
        Note(t, EventKind.BusBelowCutoff, network.NodeNames[bus], $"{network.NodeNames[bus]} below its cutoff of {cutoff}");
    }

    public void BusRose(double t, int bus)
    {
        BusLast[bus] = double.NaN;
        Note(t, EventKind.BusBack, network.NodeNames[bus], $"{network.NodeNames[bus]} above its cutoff again");
    }

    public void LoadLost(double t, int load, LossReason reason)
    {
        if (double.IsNaN(LoadFirst[load]))
        {
            LoadFirst[load] = t;
            LoadReason[load] = reason;
        }

        LoadLast[load] = t;
        Note(t, EventKind.LoadLost, network.Loads[load].Name, $"{network.Loads[load].Name} lost: {Words(reason)}");
    }

    public void LoadBack(double t, int load)
    {
        LoadLast[load] = double.NaN;
        Note(t, EventKind.LoadBack, network.Loads[load].Name, $"{network.Loads[load].Name} powered again");
    }

    public void BatteryExhausted(double t, int battery)
    {
        if (double.IsNaN(Exhaustion[battery]))
            Exhaustion[battery] = t;
        Note(t, EventKind.BatteryExhausted, network.Batteries[battery].Name, $"{network.Batteries[battery].Name} exhausted");
    }

    /// <summary>The words of a reason, as every report uses them.</summary>
    public static string Words(LossReason reason) => reason switch
    {
        LossReason.BelowMinimum => "below minimum",
        LossReason.VoltageCollapse => "voltage collapse",
        LossReason.BusDead => "bus dead",
        LossReason.NeverFed => "never fed",
        LossReason.BatteryProtection => "battery protection",
        _ => "feed opened",
    };

    /// <summary>The parts of the last events, by name.</summary>
    private ImmutableArray<string> Switching(string last)
    {
        const int looked = 12;
        return [.. events.TakeLast(looked).Select(happened => happened.Part).Append(last).Where(part => part.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    private static double[] Empty(int count)
    {
        var times = new double[count];
        Array.Fill(times, double.NaN);
        return times;
    }
}
