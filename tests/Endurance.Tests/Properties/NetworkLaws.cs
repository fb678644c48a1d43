using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using FsCheck.Xunit;

namespace Endurance.Tests.Properties;

/// <summary>Laws that hold in every network.</summary>
public sealed class NetworkLaws
{
    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(1847261,90217)", MaxTest = 400)]
    public void Start_OfAnyNetwork_ObeysKirchhoff(RandomNetwork drawn)
    {
        var scenario = drawn.Scenario;
        var network = NetworkCompiler.Compile(scenario);
        var state = new RunState(network, scenario);
        var solver = new OperatingPointSolver(network, state, 1e-8);
        var equations = solver.Equations;
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            equations.BatteryEmf[i] = scenario.Batteries[i].Emf.At(scenario.Batteries[i].InitialCharge);
            equations.BatteryResistance[i] = scenario.Batteries[i].Resistance.At(scenario.Batteries[i].InitialCharge);
            equations.BatteryChargeLimit[i] = network.Batteries[i].ChargeLimitAt(scenario.Batteries[i].InitialCharge);
        }

        if (!solver.TrySolve())
        {
            Assert.Contains(true, solver.CollapsedBuses);
            return;
        }

        equations.Assemble();
        Assert.All(equations.Residual, amperes => Assert.Equal(0, amperes, 1e-8));
        Assert.All(equations.Volts, volts => Assert.InRange(volts, 0, 15));
    }

    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(92771,31415)", MaxTest = 300)]
    public void Run_OfAnyNetwork_BalancesEnergyAndStaysFinite(RandomNetwork drawn)
    {
        var run = drawn.Scenario.Run(drawn.FailureCase, new SimulationOptions { SampleInterval = Duration.FromMinutes(7) });

        // The solver balances each bus to a nanoampere, millijoules over three hours: a share that shows where little flows.
        var flow = run.Batteries.Sum(battery => battery.DeliveredEnergy.Joules);
        if (flow > 1e5 && run.Batteries.All(battery => battery.Received.Coulombs < 1))
            Assert.Equal(0, run.EnergyResidual, 1e-9);
        var columns = run.Trace!.BusVolts.Concat(run.Trace.BatteryAmperes).Concat(run.Trace.BatteryCharge).Concat(run.Trace.FeedAmperes);
        Assert.All(columns, column => Assert.All(column.Values, value => Assert.True(double.IsFinite(value), column.Name)));
        Assert.All(run.Trace.BusVolts, column => Assert.All(column.Values, value => Assert.InRange(value, -1e-6, 15)));
        Assert.All(run.Batteries, battery => Assert.InRange(battery.ChargeEnd, 0, 1));
        Assert.All(run.Loads, load => Assert.True(load.TimePowered.Minutes() <= load.TimeLostForGood.Minutes() + 1e-9));
        Assert.All(run.Loads, load => Assert.Equal(load.TimePowered is null, load.LostBecause is null));
        Assert.Equal(run.Events.Select(item => item.Time).Order(), run.Events.Select(item => item.Time));
    }

    [Property(Arbitrary = [typeof(NetworkArbitrary)], Replay = "(5551212,77)", MaxTest = 300)]
    public void Diode_InAnyNetwork_PassesNothingBackwardsButItsLeakage(RandomNetwork drawn)
    {
        var shorted = drawn.FailureCase.Timeline.SelectMany(step => step.Actions).Where(action => action.Verb == ActionVerb.Short).Select(action => action.Target).ToHashSet(StringComparer.Ordinal);

        var run = drawn.Scenario.Run(drawn.FailureCase);

        foreach (var (feed, outcome) in drawn.Scenario.Feeds.Zip(run.Feeds).Where(pair => pair.First.Diode is not null && !shorted.Contains(pair.First.Name)))
        {
            // The junction with a heat path is at ambient when it blocks, a little below the temperature of its parameters.
            var leakage = feed.Diode is JunctionDiode diode ? diode.SaturationCurrent.Amperes + (15 * diode.Leakage.Siemens) : 0;
            Assert.InRange(outcome.LowestCurrent.Amperes, -leakage - 1e-9, double.PositiveInfinity);
        }
    }
}
