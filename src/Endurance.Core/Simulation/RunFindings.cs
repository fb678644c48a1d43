using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Simulation.Events;

namespace Endurance.Simulation;

/// <summary>What a finished run noticed about itself.</summary>
internal static class RunFindings
{
    public static ImmutableArray<Finding> Of(CompiledNetwork network, Watches watches, NetworkEquations equations)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var step in watches.Steps.Where(step => step.Cause is not null && !step.IsSpent))
        {
            var cause = step.Cause!;
            var names = string.Join(", ", step.Actions.Select(action => action.Name));
            findings.Add(new Finding("step-never-fired", Severity.Caution, cause.Bus, cause.Below.ToString(),
                $"The step that waits for {cause.Bus} below {cause.Below} for {cause.For} never came, so nothing was done about {names}. "
                + "Check the threshold, or give the step a time."));
        }

        if (equations.ThermalRunaway)
        {
            findings.Add(new Finding("thermal-runaway", Severity.Warning, "diodes", "",
                "A diode heats itself faster than its heat path carries away. Use a larger diode or a better heat path."));
        }

        return findings.ToImmutable();
    }
}
