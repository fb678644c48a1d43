using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Simulation.Events;

namespace Endurance.Simulation;

/// <summary>Keeps the extremes of every signal, and makes the result of a run out of them and the journal.</summary>
internal sealed class Recorder
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly OperatingPointSolver solver;
    private readonly StateLayout layout;
    private readonly Journal journal;
    private readonly Watches watches;
    private readonly double[] busStart;
    private readonly double[] busLowest;
    private readonly double[] batteryStart;
    private readonly double[] batteryHighest;
    private readonly double[] batteryLowest;
    private readonly double[] batteryLeast;
    private readonly double[] batteryCirculating;
    private readonly double[] feedStart;
    private readonly double[] feedHighest;
    private readonly double[] feedLowest;
    private readonly double[] diodeWatts;
    private readonly double[] junction;
    private readonly double[] alternatorHighest;
    private readonly double[] alternatorAlone;
    private readonly double[] alternatorUnexcited;
    private readonly double[] chargerHighest;
    private readonly double[][] chargesWhenWarned;

    public Recorder(
        CompiledNetwork network, RunState run, OperatingPointSolver solver, StateLayout layout, Watches watches, Journal journal)
    {
        this.network = network;
        this.run = run;
        this.watches = watches;
        this.solver = solver;
        this.layout = layout;
        this.journal = journal;
        busStart = new double[network.BusCount];
        busLowest = new double[network.BusCount];
        batteryStart = new double[network.Batteries.Length];
        batteryHighest = new double[network.Batteries.Length];
        batteryLowest = new double[network.Batteries.Length];
        batteryLeast = new double[network.Batteries.Length];
        Array.Fill(batteryLeast, double.PositiveInfinity);
        batteryCirculating = new double[network.Batteries.Length];
        feedStart = new double[network.Feeds.Length];
        feedHighest = new double[network.Feeds.Length];
        feedLowest = new double[network.Feeds.Length];
        diodeWatts = new double[network.Feeds.Length];
        junction = [.. network.Feeds.Select((_, i) => solver.Equations.JunctionKelvin(i))]; // a run that chatters at once has no other
        alternatorHighest = new double[network.Alternators.Length];
        alternatorAlone = new double[network.Alternators.Length];
        Array.Fill(alternatorAlone, double.NaN);
        alternatorUnexcited = new double[network.Alternators.Length];
        Array.Fill(alternatorUnexcited, double.NaN);
        chargerHighest = new double[network.Chargers.Length];
        chargesWhenWarned = new double[watches.Warnings.Length][];
    }

    /// <summary>Takes the present solution as the start of the run.</summary>
    public void Begin(ReadOnlySpan<double> y)
    {
        var equations = solver.Equations;
        solver.Volts.AsSpan(0, network.BusCount).CopyTo(busStart);
        busStart.CopyTo(busLowest, 0);
        equations.BatteryAmperes.CopyTo(batteryStart);
        equations.FeedAmperes.CopyTo(feedStart);
        equations.FeedAmperes.CopyTo(feedHighest);
        equations.FeedAmperes.CopyTo(feedLowest);
        Observe(0, y);
    }

    /// <summary>Takes the present solution into the extremes.</summary>
    /// <param name="t">Now, seconds.</param>
    /// <param name="y">The state of the run.</param>
    public void Observe(double t, ReadOnlySpan<double> y)
    {
        var equations = solver.Equations;
        for (var i = 0; i < busLowest.Length; i++)
            busLowest[i] = Math.Min(busLowest[i], solver.Volts[i]);
        var anyAlternator = run.AnyAlternator();
        var charged = 0.0; // what a charger gives is not one battery working on another
        foreach (var amperes in equations.ChargerAmperes)
            charged += amperes;
        for (var i = 0; i < batteryHighest.Length; i++)
        {
            var amperes = equations.BatteryAmperes[i];
            batteryHighest[i] = Math.Max(batteryHighest[i], amperes);
            batteryLowest[i] = Math.Min(batteryLowest[i], amperes);
            if (amperes >= network.Batteries[i].LowestCurrent)
                batteryLeast[i] = Math.Min(batteryLeast[i], amperes);
            if (!anyAlternator)
                batteryCirculating[i] = Math.Min(batteryCirculating[i], amperes + charged);
        }

        for (var i = 0; i < feedStart.Length; i++)
        {
            feedHighest[i] = Math.Max(feedHighest[i], equations.FeedAmperes[i]);
            feedLowest[i] = Math.Min(feedLowest[i], equations.FeedAmperes[i]);
            diodeWatts[i] = Math.Max(diodeWatts[i], equations.DiodeWatts(i));
            junction[i] = Math.Max(junction[i], equations.JunctionKelvin(i));
        }

        ObserveSources(t, equations);
        ObserveWarnings(y);
    }

    public SimulationResult Result(double[] y, double end, double[] start, SimulationStatistics statistics, Trace? trace, ImmutableArray<Finding> findings)
    {
        var source = y[layout.SourceEnergy];
        return new SimulationResult
        {
            Buses = [.. Enumerable.Range(0, network.BusCount).Select(Bus)],
            Loads = [.. Enumerable.Range(0, network.Loads.Length).Select(Load)],
            Batteries = [.. Enumerable.Range(0, network.Batteries.Length).Select(i => Battery(i, y, start))],
            Feeds = [.. Enumerable.Range(0, network.ListedFeeds).Select(i => Feed(i, y))],
            Alternators = [.. Enumerable.Range(0, network.Alternators.Length).Select(Alternator)],
            Chargers = [.. Enumerable.Range(0, network.Chargers.Length).Select(Charger)],
            Protections = [.. Enumerable.Range(0, network.Breakers.Length).Select(Protection)],
            Warnings = [.. Enumerable.Range(0, watches.Warnings.Length).Select(Warning)],
            Events = [.. journal.Events],
            Findings = findings,
            Recognition = Time(journal.Recognition),
            End = Duration.FromSeconds(end),
            EnergyResidual = source == 0 ? 0 : (source - y[layout.SinkEnergy]) / source,
            Statistics = statistics,
            Trace = trace,
        };
    }

    private void ObserveSources(double t, NetworkEquations equations)
    {
        for (var i = 0; i < alternatorHighest.Length; i++)
        {
            var amperes = equations.AlternatorAmperes[i];
            alternatorHighest[i] = Math.Max(alternatorHighest[i], amperes);
            if (amperes > 0 && double.IsNaN(alternatorAlone[i]) && !run.Backed[network.Alternators[i].Node])
                alternatorAlone[i] = t;
            if (double.IsNaN(alternatorUnexcited[i]) && run.LacksField(i))
                alternatorUnexcited[i] = t;
        }

        for (var i = 0; i < chargerHighest.Length; i++)
            chargerHighest[i] = Math.Max(chargerHighest[i], equations.ChargerAmperes[i]);
    }

    private void ObserveWarnings(ReadOnlySpan<double> y)
    {
        for (var i = 0; i < chargesWhenWarned.Length; i++)
        {
            if (double.IsNaN(watches.Warnings[i].OnAt) || chargesWhenWarned[i] is not null)
                continue;
            chargesWhenWarned[i] = new double[network.Batteries.Length];
            for (var battery = 0; battery < network.Batteries.Length; battery++)
                chargesWhenWarned[i][battery] = network.Batteries[battery].Charge(y);
        }
    }

    /// <summary>An integral of what is never negative: a step that ends inside the rise of a current can leave it a rounding below zero.</summary>
    private static double Sum(double integral) => Math.Max(0, integral);

    private static Duration? Time(double seconds) => double.IsNaN(seconds) ? null : Duration.FromSeconds(seconds);

    private BusOutcome Bus(int i) => new()
    {
        Name = network.NodeNames[i],
        Cutoff = network.Cutoffs[i] > 0 ? Voltage.FromVolts(network.Cutoffs[i]) : null,
        TimeToCutoff = Time(journal.BusFirst[i]),
        TimeToCutoffForGood = Time(journal.BusLast[i]),
        StartVoltage = Voltage.FromVolts(busStart[i]),
        LowestVoltage = Voltage.FromVolts(busLowest[i]),
    };

    private LoadOutcome Load(int i) => new()
    {
        Name = network.Loads[i].Name,
        TimePowered = Time(journal.LoadFirst[i]),
        TimeLostForGood = Time(journal.LoadLast[i]),
        LostBecause = journal.LoadReason[i],
        TimeShed = Time(journal.LoadShed[i]),
        WasConnected = journal.LoadEverConnected[i],
    };

    private BatteryOutcome Battery(int i, double[] y, double[] start) => new()
    {
        Name = network.Batteries[i].Name,
        ChargeStart = network.Batteries[i].Charge(start),
        ChargeEnd = Math.Clamp(network.Batteries[i].Charge(y), 0, 1),
        Delivered = Charge.FromCoulombs(Sum(y[layout.Delivered + i])),
        Received = Charge.FromCoulombs(Sum(y[layout.Received + i])),
        DeliveredEnergy = Energy.FromJoules(y[layout.DeliveredEnergy + i]),
        TimeToExhaustion = Time(journal.Exhaustion[i]),
        StartCurrent = Current.FromAmperes(batteryStart[i]),
        HighestCurrent = Current.FromAmperes(batteryHighest[i]),
        LowestCurrent = Current.FromAmperes(batteryLowest[i]),
        CirculatingCurrent = Current.FromAmperes(-batteryCirculating[i]),
        LowestDischarge = double.IsInfinity(batteryLeast[i]) ? null : Current.FromAmperes(batteryLeast[i]),
    };

    private FeedOutcome Feed(int i, double[] y) => new()
    {
        Name = network.Feeds[i].Name,
        StartCurrent = Current.FromAmperes(feedStart[i]),
        HighestCurrent = Current.FromAmperes(feedHighest[i]),
        LowestCurrent = Current.FromAmperes(feedLowest[i]),
        HighestDiodePower = network.Feeds[i].HasDiode ? Power.FromWatts(diodeWatts[i]) : null,
        HighestJunction = network.Feeds[i].Junction is null ? null : Temperature.FromKelvin(junction[i]),
        ReverseCharge = Charge.FromCoulombs(Sum(y[layout.FeedReverse + i])),
    };

    private AlternatorOutcome Alternator(int i) => new()
    {
        Name = network.Alternators[i].Name,
        HighestCurrent = Current.FromAmperes(alternatorHighest[i]),
        TimeAlone = Time(alternatorAlone[i]),
        TimeUnexcited = Time(alternatorUnexcited[i]),
    };

    private ChargerOutcome Charger(int i) =>
        new() { Name = network.Chargers[i].Name, HighestCurrent = Current.FromAmperes(chargerHighest[i]) };

    private ProtectionOutcome Protection(int i) => new()
    {
        Owner = network.Breakers[i].Owner,
        Kind = network.Breakers[i].Kind,
        Rating = Current.FromAmperes(network.Breakers[i].Rating),
        TimeOpened = Time(journal.Opened[i]),
        OpenedAt = double.IsNaN(journal.OpenedAt[i]) ? null : Current.FromAmperes(journal.OpenedAt[i]),
    };

    private WarningOutcome Warning(int i) => new()
    {
        Name = watches.Warnings[i].Name,
        TimeOn = Time(watches.Warnings[i].OnAt),
        ChargesWhenOn = chargesWhenWarned[i] is { } charges ? [.. charges] : [],
        HasFailed = watches.Warnings[i].HasFailed,
    };
}
