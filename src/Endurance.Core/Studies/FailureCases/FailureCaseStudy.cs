using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases.Findings;

namespace Endurance.Studies.FailureCases;

/// <summary>Runs failure cases to the end and judges each against the requirements.</summary>
public static class FailureCaseStudy
{
    /// <summary>One result a case (see <see cref="CaseResult.BreakOff"/> for one that cannot be run to its end), in the order of the cases given, whatever the number of threads.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ImmutableArray<CaseResult> Run(
        Scenario scenario,
        ImmutableArray<FailureCase> cases,
        SimulationOptions options,
        CancellationToken cancellation = default)
    {
        var simulator = new Simulator(scenario);
        var models = new CapacityModels(scenario);
        var results = new CaseResult[cases.Length];
        StudyLoop.For(cases.Length, cancellation, i =>
            results[i] = models.Compare(RunCase(scenario, simulator, cases[i], options, cancellation), cases[i], options, cancellation));
        return [.. results];
    }

    private static CaseResult RunCase(
        Scenario scenario, Simulator simulator, FailureCase failureCase, SimulationOptions options, CancellationToken cancellation)
    {
        var run = simulator.RunUntilBreakOff(failureCase, options, cancellation);
        var judged = Judgement.Of(scenario, failureCase, run);
        if (judged.BreakOff is not null)
            return judged with { Findings = [.. run.Findings, .. judged.Findings] };
        ImmutableArray<Finding> findings = [.. run.Findings, .. judged.Findings, .. MarginFindings.Of(judged.Requirements), .. CaseFindings.Of(scenario, failureCase, run)];
        return LandingReserveSearch.AddTo(judged with { Findings = findings }, scenario, simulator, failureCase, options, cancellation);
    }
}
