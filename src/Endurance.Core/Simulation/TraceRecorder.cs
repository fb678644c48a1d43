using System.Collections.Immutable;

namespace Endurance.Simulation;

/// <summary>Collects the signals of a run at a fixed spacing and on both sides of every jump.</summary>
internal sealed class TraceRecorder
{
    private readonly CompiledNetwork network;
    private readonly OperatingPointSolver solver;
    private readonly ImmutableArray<double>.Builder seconds = ImmutableArray.CreateBuilder<double>();
    private readonly ImmutableArray<double>.Builder[] busVolts;
    private readonly ImmutableArray<double>.Builder[] batteryAmperes;
    private readonly ImmutableArray<double>.Builder[] batteryCharge;
    private readonly ImmutableArray<double>.Builder[] feedAmperes;
    private readonly ImmutableArray<double>.Builder[] loadAmperes;

    public TraceRecorder(CompiledNetwork network, OperatingPointSolver solver, double interval)
    {
        this.network = network;
        this.solver = solver;
        Interval = interval;
        busVolts = Builders(network.BusCount);
        batteryAmperes = Builders(network.Batteries.Length);
        batteryCharge = Builders(network.Batteries.Length);
        feedAmperes = Builders(network.ListedFeeds);
        loadAmperes = Builders(network.Loads.Length);
    }

    /// <summary>Seconds between two samples.</summary>
    public double Interval { get; }

    /// <summary>Records the present solution.</summary>
    public void Add(double t, ReadOnlySpan<double> y)
    {
        var equations = solver.Equations;
        seconds.Add(t);
        for (var i = 0; i < busVolts.Length; i++)
            busVolts[i].Add(solver.Volts[i]);
        for (var i = 0; i < batteryAmperes.Length; i++)
        {
            batteryAmperes[i].Add(equations.BatteryAmperes[i]);
            batteryCharge[i].Add(Math.Clamp(network.Batteries[i].Charge(y), 0, 1));
        }

        for (var i = 0; i < feedAmperes.Length; i++)
            feedAmperes[i].Add(equations.FeedAmperes[i]);
        for (var i = 0; i < loadAmperes.Length; i++)
            loadAmperes[i].Add(equations.LoadAmperes(i));
    }

    public Trace ToTrace() => new()
    {
        Seconds = seconds.ToImmutable(),
        BusVolts = Columns(network.NodeNames.Take(network.BusCount), busVolts),
        BatteryAmperes = Columns(network.Batteries.Select(battery => battery.Name), batteryAmperes),
        BatteryCharge = Columns(network.Batteries.Select(battery => battery.Name), batteryCharge),
        FeedAmperes = Columns(network.Feeds.Take(network.ListedFeeds).Select(feed => feed.Name), feedAmperes),
        LoadAmperes = Columns(network.Loads.Select(load => load.Name), loadAmperes),
    };

    private static ImmutableArray<double>.Builder[] Builders(int count) =>
        [.. Enumerable.Range(0, count).Select(_ => ImmutableArray.CreateBuilder<double>())];

    private static ImmutableArray<TraceColumn> Columns(IEnumerable<string> names, ImmutableArray<double>.Builder[] values) =>
        [.. names.Zip(values, (name, column) => new TraceColumn(name, column.ToImmutable()))];
}
