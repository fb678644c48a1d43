using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;

namespace Endurance.Simulation;

/// <summary>Runs failure cases of one scenario.</summary>
/// <remarks>The scenario is compiled once; runs share nothing else and may go on in several threads.</remarks>
public sealed class Simulator
{
    private readonly Scenario scenario;
    private readonly CompiledNetwork network;

    /// <param name="scenario">A scenario without error findings of <c>ScenarioRules</c>.</param>
    public Simulator(Scenario scenario)
    {
        this.scenario = scenario;
        network = NetworkCompiler.Compile(scenario);
    }

    /// <summary>Simulates from zero to the horizon, or until no source is left and no timed step is to come.</summary>
    /// <exception cref="ChatteringException">Parts switch each other without end.</exception>
    /// <exception cref="StiffCaseException">A value far out of proportion makes the case endless to compute.</exception>
    /// <exception cref="UnsolvedNetworkException">The solver did not reach its accuracy.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SimulationResult Run(FailureCase failureCase, SimulationOptions options, CancellationToken cancellation = default)
    {
        var result = RunUntilChatter(failureCase, options, cancellation);
        return result.Chatter is { } chatter ? throw new ChatteringException(chatter, failureCase.Name) : result;
    }

    /// <summary>As <see cref="Run"/>, but parts that switch each other without end are an outcome: the run breaks off there and says so in <see cref="SimulationResult.Chatter"/>.</summary>
    /// <exception cref="UnsolvedNetworkException">The solver did not reach its accuracy.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SimulationResult RunUntilChatter(FailureCase failureCase, SimulationOptions options, CancellationToken cancellation = default)
    {
        var run = new SimulationRun(scenario, network, failureCase, options);
        try
        {
            run.Begin();
            while (!run.IsFinished)
            {
                cancellation.ThrowIfCancellationRequested();
                run.Advance();
            }

            return run.Result();
        }
        catch (ChatteringException chattering)
        {
            return run.BrokenOff(chattering.Chatter);
        }
    }

    /// <summary>Settles time zero only, and tells what is lost there at once.</summary>
    internal ImmutableArray<LoadOutcome> RunStart(FailureCase failureCase) => Start(failureCase, new SimulationOptions()).Loads;

    /// <summary>Settles time zero only; the first sample of the trace is the settled network.</summary>
    internal SimulationResult Start(FailureCase failureCase) => Start(failureCase, new SimulationOptions { SampleInterval = scenario.Horizon });

    private SimulationResult Start(FailureCase failureCase, SimulationOptions options)
    {
        var run = new SimulationRun(scenario, network, failureCase, options);
        run.Begin();
        return run.Result();
    }
}
