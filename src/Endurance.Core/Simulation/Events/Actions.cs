using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Simulation.Events;

/// <summary>Carries out the actions of a step on a run's state.</summary>
internal sealed class Actions
{
    /// <summary>Share left when every cell is shorted: the links between the cells, which keep the network solvable.</summary>
    private const double LeastWholeCells = 0.01;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly Watches watches;
    private readonly Journal journal;
    private readonly LoadEvents loads;

    public Actions(CompiledNetwork network, RunState run, Watches watches, Journal journal, LoadEvents loads)
    {
        this.loads = loads;
        this.network = network;
        this.run = run;
        this.watches = watches;
        this.journal = journal;
    }

    public void CarryOut(WaitingStep step, double t)
    {
        step.Spend(t);
        var because = Because(step);
        foreach (var action in step.Actions)
        {
            Apply(action, t);
            journal.Note(t, EventKind.Step, action.Name, $"{action.Name} {Past(action.Verb)}{(action.Position is { } position ? " to " + position : "")}{because}");
            if (t > 0 && action.IsRecognition && !step.IsUndo && double.IsNaN(journal.Recognition))
                journal.Recognition = t;
        }
    }

    private void Apply(CompiledAction action, double t)
    {
        var on = action.Verb is ActionVerb.Restore or ActionVerb.Start or ActionVerb.Close or ActionVerb.Connect;
        switch (action.Kind)
        {
            case TargetKind.Battery when action.Verb == ActionVerb.ShortCell:
                run.WholeCells[action.Index] = Math.Max(LeastWholeCells, run.WholeCells[action.Index] - (1.0 / network.Batteries[action.Index].Cells));
                break;
            case TargetKind.Battery when action.Verb == ActionVerb.Restore:
                run.BatteryFailed[action.Index] = false;
                run.WholeCells[action.Index] = 1;
                break;
            case TargetKind.Battery:
                run.BatteryFailed[action.Index] = !on;
                break;
            case TargetKind.Alternator when action.Verb is ActionVerb.Fail or ActionVerb.Restore:
                run.AlternatorFailed[action.Index] = !on;
                run.AlternatorTripped[action.Index] &= !on;
                break;
            case TargetKind.Charger when action.Verb is ActionVerb.Fail or ActionVerb.Restore:
                run.ChargerFailed[action.Index] = !on;
                break;
            case TargetKind.Charger:
                run.ChargerOn[action.Index] = on;
                break;
            case TargetKind.Warning:
                watches.Warnings[action.Index].SetFailed(!on);
                break;
            case TargetKind.Selector:
                foreach (var (feed, closed) in action.Selection)
                    run.Selected[feed] = closed;
                break;
            case TargetKind.Engine when action.Verb is ActionVerb.Idle or ActionVerb.Cruise:
                run.EngineIdle[action.Index] = action.Verb == ActionVerb.Idle;
                break;
            case TargetKind.Alternator:
                run.AlternatorOn[action.Index] = on;
                break;
            case TargetKind.Engine:
                run.EngineRunning[action.Index] = on;
                break;
            case TargetKind.Load:
                SwitchLoad(action.Index, on, t);
                break;
            case TargetKind.Contactor:
                run.ContactorClosed[action.Index] = on;
                break;
            case TargetKind.Switch:
                run.SwitchClosed[action.Index] = on;
                break;
            case TargetKind.Breaker:
                run.BreakerClosed[action.Index] = on;
                break;
            default:
                ApplyToFeed(action);
                break;
        }
    }

    private void ApplyToFeed(CompiledAction action)
    {
        switch (action.Verb)
        {
            case ActionVerb.Short:
                run.DiodeShorted[action.Index] = true;
                break;
            case ActionVerb.Break or ActionVerb.Fail:
                run.FeedBroken[action.Index] = true;
                break;
            default:
                run.FeedBroken[action.Index] = false;
                run.DiodeShorted[action.Index] = false;
                break;
        }
    }

    /// <summary>A load that is switched on starts afresh, whatever became of it before.</summary>
    private void SwitchLoad(int load, bool on, double t)
    {
        if (run.LoadConnected[load] == on)
            return;
        run.LoadConnected[load] = on;
        run.LoadDropped[load] = false;
        watches.LoadLost[load] = false;
        watches.RestartDue[load] = double.NaN;
        run.InrushUntil[load] = double.NaN;
        watches.LacksNeed[load] = false;
        journal.LoadShed[load] = on ? double.NaN : t;
        journal.LoadEverConnected[load] |= on;
        if (!on)
            return;
        journal.LoadLast[load] = double.NaN;
        loads.StartInrush(t, load);
    }

    private static string Because(WaitingStep step)
    {
        if (step.IsUndo)
            return " (undone)";
        return step.Trigger switch
        {
            WhenBelow low => $" ({low.Bus} below {low.Below} for {Held(low.For)})",
            WhenWarned warned => $" ({warned.Warning} recognised after {Held(warned.RecognisedAfter)})",
            _ => "",
        };
    }

    private static string Held(Duration time) =>
        time.Seconds < 120 ? time.ToString() : FormattableString.Invariant($"{time.Minutes:G6} min");

    private static string Past(ActionVerb verb) => verb switch
    {
        ActionVerb.Fail => "failed",
        ActionVerb.Restore => "restored",
        ActionVerb.Stop => "stopped",
        ActionVerb.Start => "started",
        ActionVerb.Open => "opened",
        ActionVerb.Close => "closed",
        ActionVerb.Shed => "shed",
        ActionVerb.Connect => "connected",
        ActionVerb.Short => "shorted",
        ActionVerb.Select => "turned",
        ActionVerb.Idle => "at idle",
        ActionVerb.Cruise => "at cruise",
        ActionVerb.ShortCell => "has a shorted cell",
        _ => "broken",
    };
}
