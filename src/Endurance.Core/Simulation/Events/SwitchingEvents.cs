using System.Globalization;

namespace Endurance.Simulation.Events;

/// <summary>What switches itself: breakers and fuses, over-voltage relays, contactors by their coil voltage, chargers.</summary>
internal sealed class SwitchingEvents
{
    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly OperatingPointSolver solver;
    private readonly GuardSet guards;
    private readonly Heats heats;
    private readonly Journal journal;

    public SwitchingEvents(CompiledNetwork network, RunState run, OperatingPointSolver solver, GuardSet guards, Heats heats, Journal journal)
    {
        this.network = network;
        this.run = run;
        this.solver = solver;
        this.guards = guards;
        this.heats = heats;
        this.journal = journal;
    }

    /// <summary>Opens what has become too hot; <see langword="true"/> when anything did.</summary>
    public bool Trip(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Breakers.Length; i++)
        {
            if (guards.IsDue(new Guard(GuardKind.Overheated, i), []))
            {
                Open(t, i);
                changed.Add(network.Breakers[i].Owner);
                any = true;
            }
        }

        return any;
    }

    /// <summary>Takes alternators off whose over-voltage relay asks for it; <see langword="true"/> when any was.</summary>
    public bool TakeOff(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Alternators.Length; i++)
        {
            if (!double.IsFinite(network.Alternators[i].TripsAbove) || !guards.IsDue(new Guard(GuardKind.OverVoltage, i), []))
                continue;
            run.AlternatorTripped[i] = true;
            journal.Note(t, EventKind.Tripped, network.Alternators[i].Name, $"{network.Alternators[i].Name} taken off by its over-voltage relay");
            changed.Add(network.Alternators[i].Name);
            any = true;
        }

        return any;
    }

    /// <summary>Moves contactors whose coil voltage asks for it; <see langword="true"/> when any moved.</summary>
    public bool MoveContactors(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Coils.Length; i++)
        {
            var coil = network.Coils[i];
            if (!coil.FollowsVoltage || !WouldMove(i))
                continue;
            run.CoilPulledIn[i] = !run.CoilPulledIn[i];
            var name = network.Feeds[coil.Feed].Name;
            var fell = run.IsEnergised(coil) ? $"dropped out: {Text(solver.Volts[coil.Node], "V")} at its coil" : "released";
            journal.Note(t, EventKind.Tripped, name, $"{name} contactor {(run.CoilPulledIn[i] ? "pulled in" : fell)}");
            changed.Add(name);
            any = true;
        }

        return any;
    }

    /// <summary>Starts and stops chargers by their input voltage; <see langword="true"/> when any changed.</summary>
    public bool SwitchChargers(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Chargers.Length; i++)
        {
            var kind = run.ChargerRunning[i] ? GuardKind.ChargerCutsOut : GuardKind.ChargerCutsIn;
            if (!double.IsFinite(network.Chargers[i].CutIn) || !guards.IsDue(new Guard(kind, i), []))
                continue;
            SetCharger(t, i, !run.ChargerRunning[i]);
            changed.Add(network.Chargers[i].Name);
            any = true;
        }

        return any;
    }

    /// <summary>Stops every charger on the collapsing buses, when no load is left to drop.</summary>
    public bool StopChargers(double t, List<string> changed)
    {
        var any = false;
        for (var i = 0; i < network.Chargers.Length; i++)
        {
            if (!run.Charges(i))
                continue;
            SetCharger(t, i, running: false);
            changed.Add(network.Chargers[i].Name);
            any = true;
        }

        return any;
    }

    private void SetCharger(double t, int i, bool running)
    {
        run.ChargerRunning[i] = running;
        var name = network.Chargers[i].Name;
        if (run.ChargerOn[i] && !run.ChargerFailed[i])
            journal.Note(t, EventKind.Tripped, name, running ? $"{name} starts" : $"{name} stops: input too low");
    }

    private bool WouldMove(int i)
    {
        if (!run.CoilPulledIn[i])
            return guards.IsDue(new Guard(GuardKind.CoilPullsIn, i), []);
        return !run.IsEnergised(network.Coils[i]) || guards.IsDue(new Guard(GuardKind.CoilDropsOut, i), []);
    }

    private void Open(double t, int i)
    {
        var breaker = network.Breakers[i];
        var amperes = Math.Abs(heats.Amperes(i)); // before it opens: a load that has tripped draws nothing
        run.Trip(breaker);
        if (double.IsNaN(journal.Opened[i]))
            (journal.Opened[i], journal.OpenedAt[i]) = (t, amperes);
        journal.Note(t, EventKind.Tripped, breaker.Owner, $"{breaker.Owner} {breaker.Word} opened: {Text(amperes, "A")} through {Text(breaker.Rating, "A")}");
    }

    private static string Text(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}");
}
