namespace Endurance.Simulation.Events;

/// <summary>All guards of a run and their values at the solver's present solution.</summary>
/// <remarks>
/// The same values find an event and, after the jump, say what is due: a guard below zero is due. Thresholds have
/// hysteresis, so that what has just happened is never due again at the same instant.
/// </remarks>
internal sealed class GuardSet
{
    /// <summary>Amperes within which a current counts as on either side of zero; far above the solver's residual.</summary>
    private const double ZeroBand = 1e-6;

    /// <summary>Relative half-width of the band around the 20-hour current.</summary>
    public const double LowestCurrentBand = 1e-6;

    /// <summary>Volts by which a bus may fall below a restart voltage while the load starts up.</summary>
    public const double RestartSag = 0.01;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly Watches watches;
    private readonly OperatingPointSolver solver;
    private readonly Heats heats;
    private readonly Guard[] all;
    private readonly ArmedGuard[] armed;
    private readonly int ofBatteries;
    private int armedOthers;
    private int armedCount;

    public GuardSet(CompiledNetwork network, RunState run, Watches watches, OperatingPointSolver solver, Heats heats)
    {
        this.heats = heats;
        this.network = network;
        this.run = run;
        this.watches = watches;
        this.solver = solver;
        all = [.. List(network, watches)];
        armed = new ArmedGuard[all.Length];
        while (ofBatteries < all.Length && all[ofBatteries].IsOfBattery)
            ofBatteries++;
    }

    /// <summary>Every guard of the run, those of the batteries first.</summary>
    public ReadOnlySpan<Guard> All => all;

    /// <summary>Those that anything can come of until the next event; made by <see cref="Arm"/>.</summary>
    public ReadOnlySpan<ArmedGuard> Armed => armed.AsSpan(0, armedCount);

    /// <summary>Works out which guards are armed after the discrete state has changed.</summary>
    public void Arm()
    {
        armedCount = 0;
        Add(all.AsSpan(ofBatteries));
        armedOthers = armedCount;
        ArmBatteries();
    }

    /// <summary>The same, where no more has changed than the branch of a battery's laws.</summary>
    public void ArmBatteries()
    {
        armedCount = armedOthers;
        Add(all.AsSpan(0, ofBatteries));
    }

    private void Add(ReadOnlySpan<Guard> guards)
    {
        foreach (var guard in guards)
        {
            if (TryArm(guard) is { } one)
                armed[armedCount++] = one;
        }
    }

    /// <summary>Whether a guard is due at the solver's present solution, by the present discrete state.</summary>
    public bool IsDue(Guard guard, ReadOnlySpan<double> y) => TryArm(guard) is { } one && Value(one, y) < 0;

    public double Value(in ArmedGuard guard, ReadOnlySpan<double> y) => guard.ValueOf(guard.Signal switch
    {
        GuardSignal.State => y[guard.Slot],
        GuardSignal.BatteryCurrent => solver.Equations.BatteryAmperes[guard.Slot],
        GuardSignal.LoadVoltage => solver.Equations.LoadVolts(guard.Slot),
        GuardSignal.Heat => heats[guard.Slot],
        _ => solver.Volts[guard.Slot],
    });

    /// <summary>Whether any armed guard is due at the solver's present solution.</summary>
    public bool AnyDue(ReadOnlySpan<double> y)
    {
        for (var i = 0; i < armedCount; i++)
        {
            if (Value(armed[i], y) < 0)
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
                GuardKind.Overheated => network.Breakers.Length,
                GuardKind.OverVoltage => network.Alternators.Length,
                <= GuardKind.CoilDropsOut => network.Coils.Length,
                <= GuardKind.ChargerCutsOut => network.Chargers.Length,
                <= GuardKind.RestartLost => network.Loads.Length,
                GuardKind.BusCutoff => network.BusCount,
                GuardKind.StepThreshold => watches.Steps.Length,
                _ => watches.Warnings.Length,
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
        GuardKind.BatteryBelowFull => network.Batteries[i].IsKinetic,
        GuardKind.ProtectionVoltage => double.IsFinite(network.Batteries[i].Protection.OpensBelow),
        GuardKind.ProtectionCurrent => double.IsFinite(network.Batteries[i].Protection.OpensAbove),
        GuardKind.ProtectionRecloses => double.IsFinite(network.Batteries[i].Protection.RecloseAbove),
        GuardKind.OverVoltage => double.IsFinite(network.Alternators[i].TripsAbove),
        GuardKind.CoilPullsIn or GuardKind.CoilDropsOut => network.Coils[i].FollowsVoltage,
        GuardKind.ChargerCutsIn or GuardKind.ChargerCutsOut => double.IsFinite(network.Chargers[i].CutIn),
        GuardKind.LoadBelowMinimum => network.Loads[i].HasMinimum,
        GuardKind.LoadJudgement => !network.Loads[i].HasMinimum,
        GuardKind.RestartReached or GuardKind.RestartLost => network.Loads[i].CanRestart,
        GuardKind.BusCutoff => network.Cutoffs[i] > 0,
        GuardKind.StepThreshold => watches.Steps[i].WaitsForBus,
        _ => true,
    };

    private ArmedGuard? TryArm(Guard guard)
    {
        var i = guard.Index;
        return guard.Kind switch
        {
            <= GuardKind.BatteryRevived => run.BatteryFailed[i] ? null : TryArmCharge(guard),
            <= GuardKind.ProtectionRecloses => run.BatteryFailed[i] ? null : TryArmProtection(guard),
            <= GuardKind.BatteryCurrentAbove => run.BatteryFailed[i] ? null : TryArmCurrent(guard),
            <= GuardKind.ChargerCutsOut => TryArmSwitching(guard),
            <= GuardKind.RestartLost => run.LoadConnected[i] && run.LoadProtected[i] ? TryArmLoad(guard) : null,
            GuardKind.BusCutoff => Crossing(guard, i, network.Cutoffs[i], watches.BusBelow[i]),
            GuardKind.StepThreshold => watches.Steps[i] is { IsSpent: false } step ? Crossing(guard, step.Bus, step.Threshold, step.IsBelow) : null,
            _ => watches.Warnings[i] is { IsSilent: false } warning ? Crossing(guard, warning.Bus, warning.Threshold, warning.IsBelow) : null,
        };
    }

    private ArmedGuard? TryArmCharge(Guard guard)
    {
        var i = guard.Index;
        var knots = network.Batteries[i].Knots;
        var segment = run.BatterySegment[i];
        return guard.Kind switch
        {
            GuardKind.BatteryKnotBelow when segment > 0 => Charge(guard, knots[segment], rising: false),
            GuardKind.BatteryKnotAbove when segment < knots.Length - 2 => Charge(guard, knots[segment + 1], rising: true),
            GuardKind.BatteryExhausted when segment == 0 && !run.BatteryExhausted[i] => Charge(guard, 0, rising: false),
            GuardKind.BatteryFull when run.BatteryModes[i] == BatteryMode.Charging => Charge(guard, 1, rising: true),
            GuardKind.BatteryBelowFull when run.BatteryModes[i] == BatteryMode.Full => Charge(guard, 1, rising: false),
            GuardKind.BatteryRevived when run.BatteryExhausted[i] => Charge(guard, network.Batteries[i].RevivedCharge, rising: true),
            _ => null,
        };
    }

    private ArmedGuard? TryArmProtection(Guard guard)
    {
        var battery = network.Batteries[guard.Index];
        return (guard.Kind, run.BatteryOpen[guard.Index]) switch
        {
            (GuardKind.ProtectionVoltage, false) when run.CanSupply(guard.Index) => Bus(guard, battery.Node, battery.Protection.OpensBelow, rising: false),
            (GuardKind.ProtectionCurrent, false) =>
                new ArmedGuard(guard, GuardSignal.BatteryCurrent, guard.Index, battery.Protection.OpensAbove, Rising: true),
            (GuardKind.ProtectionRecloses, true) => Bus(guard, battery.Node, battery.Protection.RecloseAbove, rising: true),
            _ => null,
        };
    }

    private ArmedGuard? TryArmCurrent(Guard guard)
    {
        var lowest = network.Batteries[guard.Index].LowestCurrent;
        double? threshold = (guard.Kind, run.BatteryModes[guard.Index]) switch
        {
            (GuardKind.BatteryCurrentBelow, BatteryMode.DischargingFast) => lowest * (1 - LowestCurrentBand),
            (GuardKind.BatteryCurrentBelow, BatteryMode.DischargingSlowly) => -ZeroBand,
            (GuardKind.BatteryCurrentAbove, BatteryMode.DischargingSlowly) => lowest * (1 + LowestCurrentBand),
            (GuardKind.BatteryCurrentAbove, BatteryMode.Charging or BatteryMode.Full) => ZeroBand,
            _ => null,
        };
        return threshold is { } amperes
            ? new ArmedGuard(guard, GuardSignal.BatteryCurrent, guard.Index, amperes, guard.Kind == GuardKind.BatteryCurrentAbove)
            : null;
    }

    private ArmedGuard? TryArmLoad(Guard guard)
    {
        var i = guard.Index;
        var load = network.Loads[i];
        var starting = !double.IsNaN(watches.RestartDue[i]);
        return (guard.Kind, run.LoadDropped[i]) switch
        {
            (GuardKind.LoadBelowMinimum, false) => Terminals(guard, run.DemandOf(i).AtBus(load.Minimum), rising: false),
            (GuardKind.LoadJudgement, false) when watches.LacksNeed[i] => null, // whatever its volts, it is of no use until its needs are back
            (GuardKind.LoadJudgement, false) when watches.LoadLost[i] =>
                Terminals(guard, run.DemandOf(i).AtBus(load.JudgedAt) + network.Hysteresis, rising: true),
            (GuardKind.LoadJudgement, false) => Terminals(guard, run.DemandOf(i).AtBus(load.JudgedAt), rising: false),
            (GuardKind.RestartReached, true) when !starting => Terminals(guard, load.Restart, rising: true),
            (GuardKind.RestartLost, true) when starting => Terminals(guard, load.Restart - RestartSag, rising: false),
            _ => null,
        };
    }

    private ArmedGuard? TryArmSwitching(Guard guard)
    {
        var i = guard.Index;
        switch (guard.Kind)
        {
            case GuardKind.Overheated:
                return run.IsClosed(network.Breakers[i]) ? new ArmedGuard(guard, GuardSignal.Heat, i, network.Breakers[i].Limit, Rising: true) : null;
            case GuardKind.OverVoltage:
                return run.Generates(i) ? Bus(guard, network.Alternators[i].Node, network.Alternators[i].TripsAbove, rising: true) : null;
            case GuardKind.CoilPullsIn:
                var waiting = run.IsEnergised(network.Coils[i]) && !run.CoilPulledIn[i];
                return waiting ? Bus(guard, network.Coils[i].Node, network.Coils[i].PullsInAbove, rising: true) : null;
            case GuardKind.CoilDropsOut:
                return run.CoilPulledIn[i] ? Bus(guard, network.Coils[i].Node, network.Coils[i].DropsOutBelow, rising: false) : null;
            case GuardKind.ChargerCutsIn:
                return run.ChargerRunning[i] ? null : Bus(guard, network.Chargers[i].From, network.Chargers[i].CutIn, rising: true);
            default:
                return run.ChargerRunning[i] ? Bus(guard, network.Chargers[i].From, network.Chargers[i].CutOut, rising: false) : null;
        }
    }

    private static ArmedGuard Terminals(Guard guard, double threshold, bool rising) => new(guard, GuardSignal.LoadVoltage, guard.Index, threshold, rising);

    /// <summary>The next crossing of a threshold with hysteresis above it.</summary>
    private ArmedGuard Crossing(Guard guard, int bus, double threshold, bool below) =>
        below ? Bus(guard, bus, threshold + network.Hysteresis, rising: true) : Bus(guard, bus, threshold, rising: false);

    private ArmedGuard Charge(Guard guard, double threshold, bool rising) =>
        new(guard, GuardSignal.State, network.Batteries[guard.Index].Slot, threshold, rising);

    private static ArmedGuard Bus(Guard guard, int bus, double threshold, bool rising) => new(guard, GuardSignal.BusVoltage, bus, threshold, rising);
}
