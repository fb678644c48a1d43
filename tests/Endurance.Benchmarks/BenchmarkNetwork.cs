using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Tests;
using Endurance.Tests.Reference;

namespace Endurance.Benchmarks;

/// <summary>A reference network that ends just after the cutoff whose minute is known.</summary>
public sealed class BenchmarkNetwork
{
    private readonly FailureCase failureCase;
    private readonly string bus;
    private readonly Simulator simulator;

    private BenchmarkNetwork(string name, Scenario scenario, FailureCase failureCase, string bus, double exactMinutes)
    {
        Name = name;
        this.failureCase = failureCase;
        this.bus = bus;
        ExactMinutes = exactMinutes;
        simulator = new Simulator(scenario with { Horizon = Duration.FromMinutes(exactMinutes + 0.1) });
    }

    public static BenchmarkNetwork TwoBatteries { get; } =
        new("two batteries through two diodes", ReferenceNetworks.TwoBatteriesTwoDiodes, Parts.Case(), "bus", 116.867957);

    public static BenchmarkNetwork MainAndEssential { get; } =
        new("main and essential bus", ReferenceNetworks.MainAndEssential, ReferenceNetworks.AlternatorFails, "essential", 118.424694);

    public string Name { get; }

    public bool IsTwoBatteries => ReferenceEquals(this, TwoBatteries);

    /// <summary>Minute of the cutoff by an independent solution: Scientific/networks.py, SciPy's DOP853 at its finest tolerance.</summary>
    public double ExactMinutes { get; }

    public SimulationResult Run(double tolerance) => simulator.Run(failureCase, new SimulationOptions { Tolerance = tolerance });

    public double CutoffMinutes(SimulationResult result) => result.Bus(bus).TimeToCutoff.Minutes();

    public double ErrorPercent(SimulationResult result) => ErrorPercent(CutoffMinutes(result));

    public double ErrorPercent(double minutes) => ((minutes / ExactMinutes) - 1) * 100;
}
