using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Tests.Simulation;

/// <summary>
/// Whether an operating point exists, and which, decided without continuation: every constant-power load stands as the constant
/// current P/v of the last voltages, beginning with none. No current grows with the others' voltages, so the voltages can only
/// fall, and they fall to the highest operating point or, where there is none, below every useful voltage.
/// </summary>
public sealed class OperatingPointAgreementTests
{
    /// <summary>A voltage at which constant power of a lost network has run away; solutions further down are of no use to an aircraft.</summary>
    private const double RunAway = 1.5;

    private const int MostRounds = 3000;
    private const double Settled = 1e-9;
    private const double Agreement = 1e-5;
    private const int Block = 1000;

    private enum Fall
    {
        Settles,
        RunsAway,
        Undecided,
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void RandomNetwork_WithConstantPower_CollapsesOnlyWhereTheFallingVoltagesRunAway(int block)
    {
        var undecided = 0;
        List<string> differences = [];
        for (var seed = block * Block; seed < (block + 1) * Block; seed++)
        {
            var scenario = MeshedNetwork.Of(seed);
            var (fall, volts) = Follow(scenario);
            undecided += fall == Fall.Undecided ? 1 : 0;
            var solver = SolverOf(scenario);
            var found = solver.TrySolve();
            if (Difference(fall, volts, found, solver.Volts, InUse(scenario)) is { } difference)
                differences.Add($"network {seed}: {difference}");
        }

        Assert.True(differences.Count == 0, string.Join("\n", differences));
        Assert.InRange(undecided, 0, Block / 500);
    }

    [Fact]
    public void RandomNetwork_OfManyBuses_IsAlwaysAnswered()
    {
        for (var seed = 0; seed < Block; seed++)
        {
            var scenario = MeshedNetwork.Of(seed, mostBuses: 60);
            var solver = SolverOf(scenario);

            if (solver.TrySolve())
                Assert.InRange(Math.Abs(solver.Equations.WorstResidual()), 0, 1e-7);
            else
                Assert.Contains(true, solver.CollapsedBuses);
        }
    }

    private static string? Difference(Fall fall, double[] expected, bool found, double[] actual, List<int> inUse)
    {
        switch (fall)
        {
            case Fall.Settles when !found:
                return "called a collapse, but the voltages settle at " + string.Join(", ", expected);
            case Fall.Settles when !inUse.TrueForAll(bus => Math.Abs(expected[bus] - actual[bus]) <= Agreement):
                return $"settles at {string.Join(", ", expected)}, solved as {string.Join(", ", actual)}";
            case Fall.RunsAway when found:
                return "solved, but the voltages run away: " + string.Join(", ", actual);
            default:
                return null;
        }
    }

    /// <summary>Buses with a load; one without can float behind a diode that blocks, where any voltage balances.</summary>
    private static List<int> InUse(Scenario scenario) => [.. scenario.Loads.Select(load => Node(scenario, load)).Distinct()];

    private static (Fall Fall, double[] Volts) Follow(Scenario scenario)
    {
        double[]? volts = null;
        var compiled = NetworkCompiler.Compile(scenario);
        var fed = new RunState(compiled, scenario).Energised;
        var powered = scenario.Loads.Where(load => load.Demand is ConstantPower).Select(load => Node(scenario, load)).Where(node => fed[node]).ToList();
        for (var round = 0; round < MostRounds; round++)
        {
            var solver = SolverOf(scenario with { Loads = [.. scenario.Loads.Select(load => Standing(scenario, load, volts))] });
            Assert.True(solver.TrySolve());
            if (volts is not null && volts.Zip(solver.Volts).All(pair => Math.Abs(pair.First - pair.Second) < Settled))
                return (Fall.Settles, volts);
            volts = [.. solver.Volts];
            if (powered.Exists(node => volts[node] < RunAway))
                return (Fall.RunsAway, volts);
        }

        return (Fall.Undecided, volts!);
    }

    private static Load Standing(Scenario scenario, Load load, double[]? volts) => load.Demand is ConstantPower power
        ? load with { Demand = new ConstantCurrent(volts is null || volts[Node(scenario, load)] == 0 ? default : Current.FromAmperes(power.Power.Watts / volts[Node(scenario, load)])) }
        : load;

    private static int Node(Scenario scenario, Load load) => scenario.Buses.Select(bus => bus.Name).ToList().IndexOf(load.Bus);

    private static OperatingPointSolver SolverOf(Scenario scenario)
    {
        var network = NetworkCompiler.Compile(scenario);
        var solver = new OperatingPointSolver(network, new RunState(network, scenario), 1e-8);
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            var battery = network.Batteries[i];
            solver.Equations.BatteryEmf[i] = battery.Emf[^1];
            solver.Equations.BatteryResistance[i] = battery.Resistance[^1];
            solver.Equations.BatteryChargeLimit[i] = battery.ChargeLimitAt(battery.InitialCharge);
        }

        return solver;
    }
}
