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

    private BenchmarkNetwork(Scenario scenario, FailureCase failureCase, string bus, double exactMinutes)
    {
        this.failureCase = failureCase;
        this.bus = bus;
        ExactMinutes = exactMinutes;
        simulator = new Simulator(scenario with { Horizon = Duration.FromMinutes(exactMinutes + 0.1) });
    }

    public static BenchmarkNetwork TwoBatteries { get; } = new(ReferenceNetworks.TwoBatteriesTwoDiodes, Parts.Case(), "bus", 116.868);

    public static BenchmarkNetwork MainAndEssential { get; } =
        new(ReferenceNetworks.MainAndEssential, ReferenceNetworks.AlternatorFails, "essential", 118.424);

    /// <summary>Minute of the cutoff by an independent solution.</summary>
    public double ExactMinutes { get; }

    public SimulationResult Run(double tolerance) => simulator.Run(failureCase, new SimulationOptions { Tolerance = tolerance });

    public double ErrorPercent(SimulationResult result) =>
        ((result.Bus(bus).TimeToCutoff.Minutes() / ExactMinutes) - 1) * 100;
}
