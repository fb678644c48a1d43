using Endurance.Numerics;
using Endurance.Simulation;
using Endurance.Tests.Properties;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>
/// Constant power near an alternator's limit, beside a battery that takes little or no charge: between the alternator's set-point and the
/// battery's voltage neither gives way, so that the operating point jumps from one to the other as the load grows.
/// </summary>
public sealed class OverloadedAlternatorTests
{
    [Theory]
    [InlineData(1, 40, 1, 50)]
    [InlineData(1, 20, 0.9, 5)]
    [InlineData(10, 20, 1, 0.1)]
    [InlineData(50, 5, 0.9, 50)]
    public void Load_FromBelowToAboveTheLimit_NeverCollapses(double batteryMilliohms, double limit, double charge, double wireMilliohms)
    {
        for (var share = 0.85; share < 1.3; share += 0.0031)
        {
            var watts = share * limit * 13.98;
            var scenario = Scenario(0.001) with
            {
                Buses = [Bus("bus"), Bus("far")],
                Batteries =
                [
                    Battery("battery", "bus", 20, 20, 1.1, Table((0, 12.8), (100, 12.8)), PiecewiseLinear.Constant(batteryMilliohms)) with
                    {
                        ChargeAcceptancePerHour = 1,
                        InitialCharge = charge,
                    },
                ],
                Alternators = [Alternator("alternator", "bus", 14, 10, limit)],
                Feeds = [Feed("feed", "bus", "far", wireMilliohms, wireMilliohms > 1 ? Schottky(20, 1.05, 6) : null)],
                Loads = [Watts("near_load", "bus", watts / 2, 5), Watts("far_load", "far", watts / 2, 5)],
            };

            var run = scenario.Run();

            Assert.All(run.Loads, load => Assert.True(load.LostBecause is null, $"{load.Name} lost at {share:F3} of the limit: {load.LostBecause}"));
            var drawn = watts / run.Bus("bus").StartVoltage.Volts;
            if (run.Bus("bus").StartVoltage.Volts < 12.75)
                Assert.True(drawn > limit * 0.99, $"the battery helps although only {drawn} A of {limit} A are drawn");
        }
    }

    [Theory]
    [InlineData(4275)]
    [InlineData(11768)]
    public void Network_WithAnAlternatorReachingItsLimit_LosesNothingAtAnyTolerance(int seed)
    {
        // Each was once lost to a collapse at some tolerances and to nothing at others.
        var drawn = RandomNetwork.Of(seed);
        foreach (var tolerance in new[] { 1e-7, 5e-8, 1e-8, 1e-9, 1e-10 })
        {
            var run = drawn.Scenario.Run(drawn.FailureCase, new SimulationOptions { Tolerance = tolerance });
            Assert.DoesNotContain(run.Events, item => item.Kind == EventKind.VoltageCollapse);
        }
    }
}
