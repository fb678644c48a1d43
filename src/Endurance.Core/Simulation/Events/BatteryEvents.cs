namespace Endurance.Simulation.Events;

/// <summary>What batteries do of themselves: run out, recover, open and close their protection, and change the branch of their laws.</summary>
internal sealed class BatteryEvents
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly GuardSet guards;
    private readonly Journal journal;

    public BatteryEvents(CompiledNetwork network, RunState run, GuardSet guards, Journal journal)
    {
        this.network = network;
        this.run = run;
        this.guards = guards;
        this.journal = journal;
    }

    /// <summary>Carries out what is due; returns what would have killed a bus by it, or <see langword="null"/> when nothing was.</summary>
    public LossReason? Change(double t, double[] y, List<string> changed)
    {
        LossReason? cause = null;
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            if (ChangeOne(t, i, y) is not { } one)
                continue;
            cause = one;
            changed.Add(network.Batteries[i].Name);
        }

        return cause;
    }

    public void Exhaust(double t, int battery, double[] y)
    {
        y[network.Batteries[battery].Slot] = 0;
        run.BatteryExhausted[battery] = true;
        run.BatteryModes[battery] = BatteryMode.DischargingSlowly;
        journal.BatteryExhausted(t, battery);
    }

    /// <summary>Moves every battery to the segment and branch of its laws that holds from here on; the network does not feel it.</summary>
    public void AdjustModes(double[] y)
    {
        foreach (var guard in guards.All)
        {
            if (!guard.IsOfBattery)
                return;
            while (guards.IsDue(guard, y) && Move(guard))
            {
                // a battery may have several knots to pass after a jump
            }
        }
    }

    /// <summary>Takes the segment or the branch that lies beyond a guard; <see langword="false"/>: the guard is no matter of a battery's laws.</summary>
    public bool Move(Guard guard)
    {
        var i = guard.Index;
        switch (guard.Kind)
        {
            case GuardKind.BatteryKnotBelow:
                run.BatterySegment[i]--;
                return true;
            case GuardKind.BatteryKnotAbove:
                run.BatterySegment[i]++;
                return true;
            case GuardKind.BatteryFull:
                run.BatteryModes[i] = BatteryMode.Full;
                return true;
            case GuardKind.BatteryBelowFull:
                run.BatteryModes[i] = BatteryMode.Charging;
                return true;
            case GuardKind.BatteryCurrentBelow:
                run.BatteryModes[i] = run.BatteryModes[i] == BatteryMode.DischargingFast ? BatteryMode.DischargingSlowly : BatteryMode.Charging;
                return true;
            case GuardKind.BatteryCurrentAbove:
                run.BatteryModes[i] = run.BatteryModes[i] == BatteryMode.DischargingSlowly ? BatteryMode.DischargingFast : BatteryMode.DischargingSlowly;
                return true;
            default:
                return false;
        }
    }

    private LossReason? ChangeOne(double t, int i, double[] y)
    {
        var battery = network.Batteries[i];
        var z = y[battery.Slot];
        if (IsDue(GuardKind.ProtectionVoltage, i, y) || IsDue(GuardKind.ProtectionCurrent, i, y))
        {
            run.BatteryOpen[i] = true;
            journal.Note(t, EventKind.BatteryProtection, battery.Name, $"{battery.Name} opened by its own protection");
            return LossReason.BatteryProtection;
        }

        if (IsDue(GuardKind.ProtectionRecloses, i, y))
        {
            run.BatteryOpen[i] = false;
            journal.Note(t, EventKind.BatteryProtection, battery.Name, $"{battery.Name} closed again by its own protection");
            return LossReason.BusDead;
        }

        if (run.CanSupply(i) && z < 0)
        {
            Exhaust(t, i, y);
            return LossReason.BusDead;
        }

        if (!run.BatteryExhausted[i] || z <= battery.RevivedCharge)
            return null;
        run.BatteryExhausted[i] = false;
        journal.Note(t, EventKind.BatteryRevived, battery.Name, $"{battery.Name} can supply again");
        return LossReason.BusDead;
    }

    private bool IsDue(GuardKind kind, int battery, double[] y) => guards.IsDue(new Guard(kind, battery), y);
}
