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
    private readonly Heats heats;
    private double[] newer;
    private double[] older;
    private double[] oldest;

    /// <summary>Kelvin by feed; empty where no junction follows its heat.</summary>
    private readonly double[] guess;
    private readonly double[] solvedAt;
    private bool isSolved;
    private double newerTime;
    private double olderTime;
    private double oldestTime;
    private int past;
    private ulong startPieces;

    public RunSystem(CompiledNetwork network, RunState run, StateLayout layout, OperatingPointSolver solver, GuardSet guards, Heats heats)
    {
        this.heats = heats;
        this.guards = guards;
        guess = new double[solver.Equations.HasHeatPaths ? network.Feeds.Length : 0];
        newer = new double[network.NodeCount + guess.Length];
        older = new double[newer.Length];
        oldest = new double[newer.Length];
        solvedAt = new double[layout.Controlled];
        this.network = network;
        this.run = run;
        this.layout = layout;
        this.solver = solver;
    }

    /// <summary>Stages evaluated of the step tried.</summary>
    public int Stage { get; private set; }

    /// <summary>Whether some branch was on another piece of its law at a stage of the step tried than at its start.</summary>
    public bool IsKinked { get; private set; }

    /// <summary>A bit for each stage at which a guard was due; the first stage after the start of a step is bit 1.</summary>
    public int StagesDue { get; set; }

    /// <summary>Solves the network for a state, unless it is the one solved last; <see langword="false"/> when it has no operating point.</summary>
    public bool TrySolve(ReadOnlySpan<double> y) => IsSolvedAt(y) || TrySolveAnew(y);

    /// <summary>Takes the present solution as that at the start of the next steps tried.</summary>
    public void StartStep() => startPieces = solver.Equations.Pieces;

    /// <summary>Nothing is known yet of the step to be tried.</summary>
    public void BeginTry()
    {
        Stage = 0;
        StagesDue = 0;
        IsKinked = false;
    }

    /// <summary>Forgets the voltages of earlier instants; for after a jump.</summary>
    public void ForgetPast() => past = 0;

    /// <summary>Forgets what was solved last; for after a change of which the network takes no notice but the batteries' tables do.</summary>
    public void ForgetSolution() => isSolved = false;

    public bool TryEvaluate(double t, ReadOnlySpan<double> y, Span<double> rates)
    {
        if (!IsSolvedAt(y))
        {
            Extrapolate(t);
            if (!TrySolveAnew(y))
                return false;
        }

        Remember(t);
        rates.Clear();
        var equations = solver.Equations;
        BatteryRates(equations, y, rates);
        var feeds = equations.FeedAmperes;
        for (var i = 0; i < feeds.Length; i++)
            rates[layout.FeedReverse + i] = Math.Max(0, -feeds[i]);
        OtherPower(equations, rates);
        Stage++;
        IsKinked |= equations.Pieces != startPieces;
        heats.TakeStage(Stage);
        if (guards.AnyDue(y))
            StagesDue |= 1 << Stage;
        return true;
    }

    private bool IsSolvedAt(ReadOnlySpan<double> y) => isSolved && solver.IsWarm && y[..solvedAt.Length].SequenceEqual(solvedAt);

    private bool TrySolveAnew(ReadOnlySpan<double> y)
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

        isSolved = solver.TrySolve();
        y[..solvedAt.Length].CopyTo(solvedAt);
        return isSolved;
    }

    /// <summary>Starts the solver, voltages and junctions, on the parabola through the last three solutions, or the straight line through two.</summary>
    private void Extrapolate(double t)
    {
        if (past < 2)
            return;
        var first = t - newerTime;
        var second = (t - olderTime) * first / (newerTime - oldestTime);
        var slope = 1 / (newerTime - olderTime);
        var olderSlope = 1 / (olderTime - oldestTime);
        var isCurved = past > 2;
        for (var i = 0; i < newer.Length; i++)
        {
            var line = (newer[i] - older[i]) * slope;
            var value = newer[i] + (first * line);
            if (isCurved)
                value += second * (line - ((older[i] - oldest[i]) * olderSlope));
            if (i < solver.Volts.Length)
                solver.Volts[i] = value;
            else
                guess[i - solver.Volts.Length] = value;
        }

        if (guess.Length > 0)
            solver.Equations.StartJunctions(guess);
    }

    private void Remember(double t)
    {
        if (past == 0 || t != newerTime)
        {
            (oldest, older, newer) = (older, newer, oldest);
            (oldestTime, olderTime, newerTime) = (olderTime, newerTime, t);
            past = Math.Min(past + 1, 3);
        }

        solver.Volts.CopyTo(newer, 0);
        for (var i = 0; i < guess.Length; i++)
            newer[solver.Volts.Length + i] = solver.Equations.JunctionKelvin(i);
    }

    private void BatteryRates(NetworkEquations equations, ReadOnlySpan<double> y, Span<double> rates)
    {
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var battery = network.Batteries[i];
            var amperes = equations.BatteryAmperes[i];
            var volts = equations.Volts[battery.Node];
            var mode = run.BatteryModes[i];
            battery.Rates(amperes, mode, y, rates);

            // By mode, not by sign: the step in which the current turns is cut where it does, and must be smooth beyond that.
            if (mode is BatteryMode.DischargingFast or BatteryMode.DischargingSlowly)
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

    /// <summary>Alternators and chargers' outputs give; feeds, loads, coils, fields, ground points and chargers' inputs take.</summary>
    private void OtherPower(NetworkEquations equations, Span<double> rates)
    {
        var volts = equations.Volts;
        for (var i = 0; i < network.Alternators.Length; i++)
            rates[layout.SourceEnergy] += equations.AlternatorAmperes[i] * volts[network.Alternators[i].Node];
        var sink = equations.SinkWatts();
        for (var i = 0; i < network.Chargers.Length; i++)
        {
            rates[layout.SourceEnergy] += equations.ChargerAmperes[i] * volts[network.Chargers[i].To];
            sink += run.Charges(i) ? equations.Chargers[i] : 0;
        }

        for (var i = network.FirstGround; i < network.NodeCount; i++)
            sink += volts[i] * volts[i] * network.GroundSiemens[i - network.FirstGround];
        rates[layout.SinkEnergy] += sink;
    }
}
