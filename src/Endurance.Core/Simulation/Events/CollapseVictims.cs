namespace Endurance.Simulation.Events;

/// <summary>Which loads go when the network has no operating point.</summary>
internal static class CollapseVictims
{
    /// <summary>
    /// The loads that their own conductors cannot feed, else those with the highest minimum on the collapsed buses, equals
    /// together; a load without a minimum counts as 0 V. Empty when only chargers are left to stop.
    /// </summary>
    public static int[] Of(CompiledNetwork network, RunState run, OperatingPointSolver solver)
    {
        var drawing = Enumerable.Range(0, network.Loads.Length).Where(run.LoadDraws).ToArray();
        var candidates = drawing.Where(load => solver.CollapsedLoads[load]).ToArray();
        if (candidates.Length > 0)
            return candidates;
        candidates = [.. drawing.Where(load => solver.CollapsedBuses[network.Loads[load].Node])];
        if (candidates.Length == 0)
            candidates = [.. drawing.Where(load => run.DemandOf(load).Law == LoadLaw.Power)];
        if (candidates.Length == 0)
            return [];
        var highest = candidates.Max(load => network.Loads[load].Minimum);
        return [.. candidates.Where(load => network.Loads[load].Minimum >= highest)];
    }
}
