using Endurance.Scenarios;
using Endurance.Simulation.Events;

namespace Endurance.Simulation;

/// <summary>Knows when the rest of a run can change no verdict and no endurance any more.</summary>
/// <remarks>Only where first losses decide: a requirement that allows dips, or a load that has been switched off and may come back, keeps the run going.</remarks>
internal sealed class RequirementWatch
{
    private readonly Journal journal;
    private readonly (double Endure, int[] Loads, int Bus)[] requirements;
    private readonly int[] loads;
    private readonly bool isDecidable;

    public RequirementWatch(Scenario scenario, FailureCase failureCase, Journal journal)
    {
        this.journal = journal;
        var applying = scenario.Requirements.Where(requirement => requirement.AppliesTo(failureCase)).ToArray();
        isDecidable = applying.Length > 0 && !applying.Any(requirement => requirement.DipsAllowed);
        requirements =
        [
            .. applying.Select(requirement => (
                requirement.Endure.Seconds,
                scenario.Loads.Index().Where(load => requirement.Loads.Contains(load.Item.Name)).Select(load => load.Index).ToArray(),
                scenario.Buses.Index().Where(bus => string.Equals(bus.Item.Name, requirement.Bus, StringComparison.Ordinal)).Select(bus => bus.Index).DefaultIfEmpty(-1).First())),
        ];
        loads = [.. requirements.SelectMany(requirement => requirement.Loads).Distinct()];
    }

    /// <summary>Whether something required is lost and every other requirement is lost or fulfilled.</summary>
    public bool IsDecided(double t)
    {
        if (!isDecidable || Array.Exists(loads, load => !double.IsNaN(journal.LoadShed[load]) || !journal.LoadEverConnected[load]))
            return false;
        var anyLost = false;
        foreach (var (endure, required, bus) in requirements)
        {
            var isLost = bus >= 0 ? !double.IsNaN(journal.BusFirst[bus]) : Array.Exists(required, load => !double.IsNaN(journal.LoadFirst[load]));
            if (!isLost && t < endure)
                return false;
            anyLost |= isLost;
        }

        return anyLost;
    }
}
