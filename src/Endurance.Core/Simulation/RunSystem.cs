using Endurance.Numerics;
using Endurance.Simulation.Events;

namespace Endurance.Simulation;

/// <summary>The rates of one run's state: the network solved for the present charges, then each battery's lifetime law.</summary>
internal sealed class RunSystem : IDifferentialSystem
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly StateLayout layout;
    private readonly OperatingPointSolver solver;
    private readonly GuardSet guards;
    private double[] newer;
    private double[] older;
    private readonly double[] guess;
    private double newerTime;
    private double olderTime;
    private int past;

    public RunSystem(CompiledNetwork network, RunState run, StateLayout layout, OperatingPointSolver solver, GuardSet guards)
    {
        this.guards = guards;
        newer = new double[network.NodeCount + network.Feeds.Length];
        older = new double[newer.Length];
        guess = new double[network.Feeds.Length];
        this.network = network;
        this.run = run;
        this.layout = layout;
        this.solver = solver;
    }

    /// <summary>Stages evaluated since it was last set to zero.</summary>
    public int Stage { get; set; }

    /// <summary>A bit for each stage at which a guard was due; the first stage after the start of a step is bit 1.</summary>
    public int StagesDue { get; set; }

    /// <summary>Solves the network for a state; <see langword="false"/> when it has no operating point.</summary>
    public bool TrySolve(ReadOnlySpan<double> y)
    {
        var equations = solver.Equations;
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var battery = network.Batteries[i];
            var segment = run.BatterySegment[i];
            var whole = run.WholeCells[i];
            equations.BatteryEmf[i] = whole * battery.EmfAt(y, segment);
            equations.BatteryResistance[i] = whole * battery.ResistanceAt(y[battery.Slot], segment);
            equations.BatteryChargeLimit[i] = battery.ChargeLimitAt(y[battery.Slot]);
        }

        return solver.TrySolve();
    }

    /// <summary>Forgets the voltages of earlier instants; for after a jump.</summary>
    public void ForgetPast() => past = 0;

    public bool TryEvaluate(double t, ReadOnlySpan<double> y, Span<double> rates)
    {
        Extrapolate(t);
        if (!TrySolve(y))
            return false;
        Remember(t);
        rates.Clear();
        var equations = solver.Equations;
        BatteryRates(equations, y, rates);
        for (var i = 0; i < network.Feeds.Length; i++)
        {
            var amperes = equations.FeedAmperes[i];
            var feed = network.Feeds[i];
            rates[layout.FeedReverse + i] = Math.Max(0, -amperes);
            rates[layout.SinkEnergy] += amperes * equations.FeedVolts(feed);
        }

        OtherPower(equations, rates);
        Stage++;
        if (guards.AnyDue(y))
            StagesDue |= 1 << Stage;
        return true;
    }

    /// <summary>Starts the solver, voltages and junctions, on the straight line through the last two solutions.</summary>
    private void Extrapolate(double t)
    {
        if (past < 2 || newerTime == olderTime)
            return;
        var share = (t - newerTime) / (newerTime - olderTime);
        for (var i = 0; i < solver.Volts.Length; i++)
            solver.Volts[i] = newer[i] + (share * (newer[i] - older[i]));
        if (!solver.Equations.HasHeatPaths)
            return;
        for (var i = 0; i < guess.Length; i++)
        {
            var at = solver.Volts.Length + i;
            guess[i] = newer[at] + (share * (newer[at] - older[at]));
        }

        solver.Equations.StartJunctions(guess);
    }

    private void Remember(double t)
    {
        if (past == 0 || t != newerTime)
        {
            (older, newer) = (newer, older);
            olderTime = newerTime;
            newerTime = t;
            past = Math.Min(past + 1, 2);
        }

        solver.Volts.CopyTo(newer, 0);
        for (var i = 0; i < guess.Length && solver.Equations.HasHeatPaths; i++)
            newer[solver.Volts.Length + i] = solver.Equations.JunctionKelvin(i);
    }

    private void BatteryRates(NetworkEquations equations, ReadOnlySpan<double> y, Span<double> rates)
    {
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var battery = network.Batteries[i];
            var amperes = equations.BatteryAmperes[i];
            var volts = equations.Volts[battery.Node];
            battery.Rates(amperes, run.BatteryModes[i], y, rates);
            if (amperes > 0)
            {
                rates[layout.Delivered + i] = amperes;
                rates[layout.DeliveredEnergy + i] = amperes * volts;
            }
            else
            {
                rates[layout.Received + i] = -amperes;
            }

            rates[layout.SourceEnergy] += amperes * equations.BatteryEmf[i];
            rates[layout.SinkEnergy] += amperes * (equations.BatteryEmf[i] - volts);
        }
    }

    /// <summary>Alternators and chargers' outputs give; loads, coils, fields, ground points and chargers' inputs take.</summary>
    private void OtherPower(NetworkEquations equations, Span<double> rates)
    {
        var volts = equations.Volts;
        for (var i = 0; i < network.Alternators.Length; i++)
            rates[layout.SourceEnergy] += equations.AlternatorAmperes[i] * volts[network.Alternators[i].Node];
        var sink = equations.DrawnWatts;
        for (var i = 0; i < network.Chargers.Length; i++)
        {
            rates[layout.SourceEnergy] += equations.ChargerAmperes[i] * volts[network.Chargers[i].To];
            sink += run.Charges(i) ? equations.ChargerWatts[i] : 0;
        }

        for (var i = network.FirstGround; i < network.NodeCount; i++)
            sink += volts[i] * volts[i] * network.GroundSiemens[i - network.FirstGround];
        rates[layout.SinkEnergy] += sink;
    }
}
