namespace Endurance.Simulation.Events;

/// <summary>All guards of a run and their values at the solver's present solution.</summary>
/// <remarks>
/// The same values find an event and, after the jump, say what is due: a guard below zero is due. Thresholds have
/// hysteresis, so that what has just happened is never due again at the same instant.
/// </remarks>
internal sealed class GuardSet
{
    /// <summary>Amperes within which a current counts as on either side of zero; far above the solver's residual.</summary>
    public const double ZeroBand = 1e-6;

    /// <summary>Relative half-width of the band around the 20-hour current.</summary>
    public const double LowestCurrentBand = 1e-6;

    /// <summary>Charge above which an exhausted battery can give again.</summary>
    public const double RevivedCharge = 0.001;

    /// <summary>Volts by which a bus may fall below a restart voltage while the load starts up.</summary>
    public const double RestartSag = 0.01;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly Watches watches;
    private readonly OperatingPointSolver solver;
    private readonly Guard[] guards;

    public GuardSet(CompiledNetwork network, RunState run, Watches watches, OperatingPointSolver solver)
    {
        this.network = network;
        this.run = run;
        this.watches = watches;
        this.solver = solver;
        guards = [.. List(network, watches)];
    }

    public ReadOnlySpan<Guard> All => guards;

    public double Value(Guard guard, ReadOnlySpan<double> y) => guard.Kind switch
    {
        <= GuardKind.BatteryCurrentAbove => BatteryValue(guard, guard.NeedsOnlyCharge ? y[guard.Index] : 0),
        <= GuardKind.RestartLost => LoadValue(guard),
        GuardKind.BusCutoff => Crossing(solver.Volts[guard.Index], network.Cutoffs[guard.Index], watches.BusBelow[guard.Index]),
        _ => StepValue(guard.Index),
    };

    /// <summary>Value of a guard that <see cref="Guard.NeedsOnlyCharge"/>, for a charge.</summary>
    public double ChargeValue(Guard guard, double z) => BatteryValue(guard, z);

    public bool AnyDue(ReadOnlySpan<double> y)
    {
        foreach (var guard in guards)
        {
            if (Value(guard, y) < 0)
                return true;
        }

        return false;
    }

    private static IEnumerable<Guard> List(CompiledNetwork network, Watches watches)
    {
        foreach (var kind in Enum.GetValues<GuardKind>())
        {
            var count = kind switch
            {
                <= GuardKind.BatteryCurrentAbove => network.Batteries.Length,
                <= GuardKind.RestartLost => network.Loads.Length,
                GuardKind.BusCutoff => network.BusCount,
                _ => watches.Steps.Length,
            };
            for (var i = 0; i < count; i++)
            {
                if (CanEverBeDue(kind, i, network, watches))
                    yield return new Guard(kind, i);
            }
        }
    }

    private static bool CanEverBeDue(GuardKind kind, int i, CompiledNetwork network, Watches watches) => kind switch
    {
        GuardKind.LoadBelowMinimum => network.Loads[i].HasMinimum,
        GuardKind.LoadJudgement => !network.Loads[i].HasMinimum,
        GuardKind.RestartReached or GuardKind.RestartLost => network.Loads[i].CanRestart,
        GuardKind.BusCutoff => network.Cutoffs[i] > 0,
        GuardKind.StepThreshold => watches.Steps[i].WaitsForBus,
        _ => true,
    };

    private double BatteryValue(Guard guard, double z)
    {
        var i = guard.Index;
        if (run.BatteryFailed[i])
            return double.PositiveInfinity;
        var battery = network.Batteries[i];
        var segment = run.BatterySegment[i];
        var mode = run.BatteryModes[i];
        switch (guard.Kind)
        {
            case GuardKind.BatteryKnotBelow:
                return segment > 0 ? z - battery.Knots[segment] : double.PositiveInfinity;
            case GuardKind.BatteryKnotAbove:
                return segment < battery.Knots.Length - 2 ? battery.Knots[segment + 1] - z : double.PositiveInfinity;
            case GuardKind.BatteryExhausted:
                return segment == 0 && !run.BatteryExhausted[i] ? z : double.PositiveInfinity;
            case GuardKind.BatteryFull:
                return mode == BatteryMode.Charging ? 1 - z : double.PositiveInfinity;
            case GuardKind.BatteryRevived:
                return run.BatteryExhausted[i] ? RevivedCharge - z : double.PositiveInfinity;
            case GuardKind.BatteryCurrentBelow:
                return CurrentBelow(solver.Equations.BatteryAmperes[i], battery.LowestCurrent, mode);
            default:
                return CurrentAbove(solver.Equations.BatteryAmperes[i], battery.LowestCurrent, mode);
        }
    }

    private static double CurrentBelow(double amperes, double lowest, BatteryMode mode) => mode switch
    {
        BatteryMode.DischargingFast => amperes - (lowest * (1 - LowestCurrentBand)),
        BatteryMode.DischargingSlowly => amperes + ZeroBand,
        _ => double.PositiveInfinity,
    };

    private static double CurrentAbove(double amperes, double lowest, BatteryMode mode) => mode switch
    {
        BatteryMode.DischargingFast => double.PositiveInfinity,
        BatteryMode.DischargingSlowly => (lowest * (1 + LowestCurrentBand)) - amperes,
        _ => ZeroBand - amperes,
    };

    private double LoadValue(Guard guard)
    {
        var i = guard.Index;
        if (!run.LoadConnected[i])
            return double.PositiveInfinity;
        var load = network.Loads[i];
        var volts = solver.Volts[load.Node];
        var dropped = run.LoadDropped[i];
        var starting = !double.IsNaN(watches.RestartDue[i]);
        return guard.Kind switch
        {
            GuardKind.LoadBelowMinimum => dropped ? double.PositiveInfinity : volts - load.Minimum,
            GuardKind.LoadJudgement => dropped ? double.PositiveInfinity : Crossing(volts, load.JudgedAt, watches.LoadLost[i]),
            GuardKind.RestartReached => dropped && !starting ? load.Restart - volts : double.PositiveInfinity,
            _ => dropped && starting ? volts - (load.Restart - RestartSag) : double.PositiveInfinity,
        };
    }

    private double StepValue(int i)
    {
        var step = watches.Steps[i];
        return step.IsSpent ? double.PositiveInfinity : Crossing(solver.Volts[step.Bus], step.Threshold, step.IsBelow);
    }

    /// <summary>Distance to the next crossing of a threshold with hysteresis above it.</summary>
    private double Crossing(double volts, double threshold, bool below) =>
        below ? threshold + network.Hysteresis - volts : volts - threshold;
}
