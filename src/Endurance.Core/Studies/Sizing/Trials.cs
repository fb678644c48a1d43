using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.Sizing;

/// <summary>Runs every case of a scenario and says how near it is to failing a requirement.</summary>
internal static class Trials
{
    public static Trial Of(Scenario scenario, double value, SimulationOptions options, CancellationToken cancellation)
    {
        var simulator = new Simulator(scenario);
        var passes = true;
        var worst = (Meets: true, Margin: double.PositiveInfinity);
        BreakOff? breakOff = null;
        CaseResult? deciding = null;
        RequirementResult? decidingRequirement = null;
        var least = new Duration?[scenario.Requirements.Length];
        foreach (var failureCase in scenario.FailureCases)
        {
            var judged = Judgement.Of(scenario, failureCase, simulator.RunUntilBreakOff(failureCase, options, cancellation));
            deciding ??= judged;
            breakOff ??= judged.BreakOff;
            passes &= judged.BreakOff is null;
            foreach (var requirement in judged.Requirements)
            {
                passes &= requirement.Verdict == Verdict.Pass;
                var index = scenario.Requirements.IndexOf(requirement.Requirement);
                if (requirement.Endurance is { } time && !(least[index] <= time))
                    least[index] = time;
                // A case that breaks off fails with whatever margin it had up to there.
                var standing = (Meets: requirement.Verdict == Verdict.Pass, requirement.Endurance is { } lasts ? lasts / requirement.Requirement.Endure : double.PositiveInfinity);
                if (standing.CompareTo(worst) >= 0)
                    continue;
                worst = standing;
                (deciding, decidingRequirement) = (judged, requirement);
            }
        }

        return new Trial(value, passes, worst.Margin, decidingRequirement?.Endurance, deciding?.Name ?? "", decidingRequirement?.LimitedBy, decidingRequirement?.Requirement.Endure)
        {
            ByRequirement = [.. least],
            BreakOff = breakOff,
            DecidingBreakOff = deciding?.BreakOff,
        };
    }
}
