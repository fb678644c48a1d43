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

    /// <summary>Simulates from zero to the horizon, or until no source is left and no step is to come.</summary>
    /// <exception cref="BrokenOffException">The case cannot be computed to its end.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SimulationResult Run(FailureCase failureCase, SimulationOptions options, CancellationToken cancellation = default)
    {
        var result = RunUntilBreakOff(failureCase, options, cancellation);
        return result.BreakOff is { } breakOff ? throw new BrokenOffException(breakOff, failureCase.Name) : result;
    }

    /// <summary>As <see cref="Run"/>, but a case that cannot be computed to its end is an outcome: the run breaks off there and says so in <see cref="SimulationResult.BreakOff"/>.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SimulationResult RunUntilBreakOff(FailureCase failureCase, SimulationOptions options, CancellationToken cancellation = default)
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
        catch (BrokenOffException broken)
        {
            return run.BrokenOff(broken.BreakOff);
        }
        catch (UnsolvedNetworkException unsolved)
        {
            return run.BrokenOff(BreakOff.OfUnsolved(unsolved, run.Now));
        }
    }

    /// <summary>Settles time zero only, and tells what is lost there at once.</summary>
    /// <exception cref="BrokenOffException">It does not settle.</exception>
    internal ImmutableArray<LoadOutcome> RunStart(FailureCase failureCase) => Start(failureCase, new SimulationOptions()).Loads;

    /// <summary>Settles time zero only; the first sample of the trace is the settled network.</summary>
    /// <exception cref="BrokenOffException">It does not settle.</exception>
    internal SimulationResult Start(FailureCase failureCase) => Start(failureCase, new SimulationOptions { SampleInterval = scenario.Horizon });

    private SimulationResult Start(FailureCase failureCase, SimulationOptions options)
    {
        var run = new SimulationRun(scenario, network, failureCase, options);
        try
        {
            run.Begin();
            return run.Result();
        }
        catch (UnsolvedNetworkException unsolved)
        {
            throw new BrokenOffException(BreakOff.OfUnsolved(unsolved, run.Now), failureCase.Name);
        }
    }
}
