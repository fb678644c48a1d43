namespace Endurance.Simulation.Events;

/// <summary>Which loads go when the network has no operating point.</summary>
internal static class CollapseVictims
{
    /// <summary>The loads with the highest minimum on the collapsed buses, equals together; a load without one counts as 0 V.</summary>
    public static int[] Of(CompiledNetwork network, RunState run, OperatingPointSolver solver)
    {
        var drawing = Enumerable.Range(0, network.Loads.Length).Where(run.LoadDraws).ToArray();
        var candidates = drawing.Where(load => solver.CollapsedBuses[network.Loads[load].Node]).ToArray();
        if (candidates.Length == 0)
            candidates = [.. drawing.Where(load => network.Loads[load].Law == LoadLaw.Power)];
        if (candidates.Length == 0)
            throw new UnsolvedNetworkException(network.BusNames[solver.Equations.WorstBus()], solver.Equations.WorstResidual());
        var highest = candidates.Max(load => network.Loads[load].Minimum);
        return [.. candidates.Where(load => network.Loads[load].Minimum >= highest)];
    }
}
