using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

public sealed class PolarisationTests
{
    /// <summary>V = 12 - I (R0 + Rp (1 - exp(-t/tau))) with 10 A, 20 and 30 mohm, 40 s.</summary>
    [Theory]
    [InlineData(20)]
    [InlineData(40)]
    [InlineData(200)]
    public void Voltage_AfterTheLoadComesOn_LagsWithItsTime(double seconds)
    {
        var scenario = Bench(new PolarisationPair(Resistance.FromMilliohms(30), Duration.FromSeconds(40)), PiecewiseLinear.Constant(12)) with { Horizon = Duration.FromSeconds(seconds) };

        var trace = scenario.Run(null, new SimulationOptions { SampleInterval = Duration.FromSeconds(seconds) }).Trace!;

        Assert.Equal(12 - (10 * (0.020 + (0.030 * (1 - Math.Exp(-seconds / 40))))), trace.BusVolts[0].Values[^1], 1e-5);
    }

    /// <summary>A pair that has settled is a resistance: EMF 10 + 3 z behind 50 mohm at 10 A stands at 11 V when z = 0.5.</summary>
    [Fact]
    public void FastPair_OverAWholeDischarge_EndsWhereTheSettledResistanceDoes()
    {
        var scenario = Bench(new PolarisationPair(Resistance.FromMilliohms(30), Duration.FromSeconds(1)), Table((0, 10), (100, 13)), cutoff: 11);

        Assert.Equal(30, scenario.Run().Bus("bus").TimeToCutoff.Minutes(), 0.01);
    }

    private static Scenario Bench(PolarisationPair pair, PiecewiseLinear emf, double? cutoff = null) => Scenario() with
    {
        Buses = [Bus("bus", cutoff)],
        Batteries = [Battery("battery", "bus", 10, 1, 1, emf, PiecewiseLinear.Constant(20)) with { Polarisation = [pair] }],
        Loads = [Amperes("load", "bus", 10)],
    };
}
