using Endurance.Numerics;

namespace Endurance.Simulation.Events;

/// <summary>Finds the first instant of a step at which a guard falls below zero, on the step's dense output.</summary>
internal sealed class EventLocator
{
    /// <summary>Seconds within which an event is located.</summary>
    private const double TimeTolerance = 1e-4;

    private readonly RungeKutta method;
    private readonly RunSystem system;
    private readonly GuardSet guards;
    private readonly Heats heats;
    private double length;
    private readonly double[] probe;
    private readonly double[] startValues;
    private readonly double[] endValues;

    public EventLocator(RungeKutta method, RunSystem system, GuardSet guards, Heats heats, int stateSize)
    {
        this.heats = heats;
        this.method = method;
        this.system = system;
        this.guards = guards;
        probe = new double[stateSize];
        startValues = new double[guards.All.Length];
        endValues = new double[guards.All.Length];
    }

    /// <summary>What <see cref="Locate"/> found to be due, where nothing else is at the end of the step.</summary>
    public Guard? DueAlone { get; private set; }

    /// <summary>Remembers the guards' values at the start of a step; the solver must be at that state, and the guards armed.</summary>
    public void StartFrom(ReadOnlySpan<double> y) => Evaluate(y, startValues);

    /// <summary>
    /// Looks for the first due guard in the step just tried; <paramref name="stagesDue"/> has a bit for each stage at which
    /// a guard was below zero. Returns the fraction of the step, just past the crossing, or NaN when there is none.
    /// </summary>
    public double Locate(double h, int stagesDue)
    {
        length = h;
        DueAlone = null;
        var right = FirstDueEnd(stagesDue);
        var found = double.IsNaN(right) ? right : FirstDue(h, right);
        heats.Elapsed = 0;
        return found;
    }

    private double FirstDue(double h, double right)
    {
        var tolerance = TimeTolerance / h;
        var left = 0.0;
        while (true)
        {
            var earliest = EarliestBySecant();
            var isAlone = !IsAnyOtherDue(earliest);
            var search = new GuardAlong(this, guards.Armed[earliest]);
            (left, var narrowed) = CrossingFinder.Narrow(ref search, 0, Math.Max(0, startValues[earliest]), right, endValues[earliest], tolerance);
            right = narrowed;
            if (isAlone)
                DueAlone = guards.Armed[earliest].Guard;
            if (isAlone || !DueAt(right) || !IsAnyOtherDue(earliest) || left <= 0 || !DueAt(left))
                return right;
            right = left;
        }
    }

    /// <summary>First stage, or the end, of the step where a guard is due; fills the values there.</summary>
    private double FirstDueEnd(int stagesDue)
    {
        for (var s = 1; s < method.StageNodes.Length - 1; s++)
        {
            if ((stagesDue & (1 << s)) != 0 && DueAt(method.StageNodes[s]))
                return method.StageNodes[s];
        }

        return DueAt(1) ? 1 : double.NaN;
    }

    private bool DueAt(double theta)
    {
        method.Interpolate(theta, probe);
        heats.Elapsed = theta * length;
        return system.TrySolve(probe) && Evaluate(probe, endValues);
    }

    private bool IsAnyOtherDue(int except)
    {
        for (var i = 0; i < guards.Armed.Length; i++)
        {
            if (i != except && endValues[i] < 0)
                return true;
        }

        return false;
    }

    private bool Evaluate(ReadOnlySpan<double> y, double[] values)
    {
        var any = false;
        var armed = guards.Armed;
        for (var i = 0; i < armed.Length; i++)
        {
            values[i] = guards.Value(armed[i], y);
            any |= values[i] < 0;
        }

        return any;
    }

    private int EarliestBySecant()
    {
        var earliest = -1;
        var best = double.PositiveInfinity;
        for (var i = 0; i < guards.Armed.Length; i++)
        {
            if (endValues[i] >= 0)
                continue;
            var crossing = startValues[i] <= 0 ? 0 : startValues[i] / (startValues[i] - endValues[i]);
            if (crossing < best)
                (best, earliest) = (crossing, i);
        }

        return earliest;
    }

    /// <summary>One guard's value as a function of the fraction of the step.</summary>
    private readonly struct GuardAlong(EventLocator locator, ArmedGuard guard) : CrossingFinder.IFunction
    {
        /// <summary>Stands for a guard far below zero where the network has no operating point.</summary>
        private const double Beyond = -1;

        public double At(double x)
        {
            if (guard.Signal == GuardSignal.State)
                return guard.ValueOf(locator.method.Interpolate(x, guard.Slot));
            if (guard.Signal == GuardSignal.Heat)
            {
                locator.heats.Elapsed = x * locator.length;
                return guard.ValueOf(locator.heats[guard.Slot]);
            }

            locator.method.Interpolate(x, locator.probe);
            return locator.system.TrySolve(locator.probe) ? locator.guards.Value(guard, locator.probe) : Beyond;
        }
    }
}
