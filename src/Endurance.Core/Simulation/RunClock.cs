using Endurance.Simulation.Events;

namespace Endurance.Simulation;

/// <summary>Knows what comes by the clock: steps, warnings, start-ups, ends of inrush, the horizon.</summary>
internal sealed class RunClock
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly Watches watches;
    private readonly double horizon;

    public RunClock(CompiledNetwork network, RunState run, Watches watches, double horizon)
    {
        this.network = network;
        this.run = run;
        this.watches = watches;
        this.horizon = horizon;
    }

    /// <summary>Seconds of the next thing that comes by the clock.</summary>
    /// <param name="t">Now, seconds.</param>
    public double NextDue(double t)
    {
        var next = horizon;
        foreach (var step in watches.Steps)
        {
            if (!step.IsSpent)
                next = Math.Min(next, step.Due);
        }

        foreach (var due in watches.RestartDue)
        {
            if (due < next)
                next = due;
        }

        foreach (var warning in watches.Warnings)
        {
            if (!warning.IsSilent)
                next = Math.Min(next, warning.Due);
        }

        foreach (var until in run.InrushUntil)
        {
            if (until < next)
                next = until;
        }

        return Math.Max(next, t);
    }

    /// <summary>A step that has a time by now, or will when its warning comes on; or a battery whose bound well will refill the available one.</summary>
    public bool IsAnythingToCome(ReadOnlySpan<double> y)
    {
        foreach (var step in watches.Steps)
        {
            if (!step.IsSpent && (double.IsFinite(step.Due) || WillBeWarned(step)))
                return true;
        }

        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var battery = network.Batteries[i];
            if (battery.IsKinetic && run.IsJoined(i) && battery.Charge(y) > battery.RevivedCharge)
                return true;
        }

        return false;
    }

    private bool WillBeWarned(WaitingStep step) =>
        step.Warning >= 0 && watches.Warnings[step.Warning] is { IsSilent: false } warning && double.IsFinite(warning.Due);
}
