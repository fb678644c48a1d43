using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation.Events;

namespace Endurance.Simulation;

/// <summary>What a finished run noticed about itself.</summary>
internal static class RunFindings
{
    public static ImmutableArray<Finding> Of(CompiledNetwork network, Watches watches, NetworkEquations equations) =>
        [.. watches.Steps.Where(step => !step.IsTimed && !step.IsSpent).Select(NeverCame), .. OfDiodes(equations)];

    /// <summary>Those that hold however far the run went.</summary>
    public static ImmutableArray<Finding> OfDiodes(NetworkEquations equations) => !equations.ThermalRunaway ? [] :
    [
        new Finding("thermal-runaway", Severity.Warning, "diodes", "",
            "A diode heats itself faster than its heat path carries away. Use a larger diode or a better heat path."),
    ];

    private static Finding NeverCame(WaitingStep step)
    {
        var (part, value, what) = step.Trigger switch
        {
            WhenBelow low => (low.Bus, low.Below.ToString(), $"{low.Bus} below {low.Below} for {low.For}"),
            WhenWarned warned => (warned.Warning, "", $"{warned.Warning} to be recognised after {warned.RecognisedAfter}"),
            _ => ("", "", "nothing"),
        };
        var names = string.Join(", ", step.Actions.Select(action => action.Name));
        return new Finding("step-never-fired", Severity.Caution, part, value,
            $"The step that waits for {what} never came, so nothing was done about {names}. Check the threshold, or give the step a time.");
    }
}
