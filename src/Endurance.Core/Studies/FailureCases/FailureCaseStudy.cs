using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases;

/// <summary>Runs failure cases to the end and judges each against the requirements.</summary>
public static class FailureCaseStudy
{
    /// <summary>One result a case, in the order of the cases given, whatever the number of threads.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ImmutableArray<CaseResult> Run(
        Scenario scenario,
        ImmutableArray<FailureCase> cases,
        SimulationOptions options,
        CancellationToken cancellation = default) => throw new NotSupportedException();
}
