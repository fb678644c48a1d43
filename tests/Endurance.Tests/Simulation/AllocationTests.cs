using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Tests.Reference;

namespace Endurance.Tests.Simulation;

/// <summary>A run takes its workspace at the start and nothing more on the way.</summary>
public sealed class AllocationTests
{
    [Fact]
    public void Step_OfALongerOrFinerRun_AllocatesNothing()
    {
        var coarse = Measure(1e-6, minutes: 100);
        var fine = Measure(1e-11, minutes: 100);

        Assert.True(fine.Steps > 5 * coarse.Steps);
        Assert.InRange(fine.Bytes, coarse.Bytes - 256, coarse.Bytes + 256);
    }

    [Fact]
    public void Runs_OneAfterAnother_AllocateTheSame()
    {
        Measure(1e-5, minutes: 100);
        var early = Measure(1e-5, minutes: 100).Bytes;
        for (var i = 0; i < 300; i++)
            Measure(1e-5, minutes: 100);

        Assert.InRange(Measure(1e-5, minutes: 100).Bytes, early - 256, early + 256);
    }

    private static (long Bytes, int Steps) Measure(double tolerance, double minutes)
    {
        var simulator = new Simulator(ReferenceNetworks.TwoBatteriesTwoDiodes with { Horizon = Duration.FromMinutes(minutes) });
        var options = new SimulationOptions { Tolerance = tolerance };
        simulator.Run(Parts.Case(), options);
        var before = GC.GetAllocatedBytesForCurrentThread();

        var run = simulator.Run(Parts.Case(), options);

        return (GC.GetAllocatedBytesForCurrentThread() - before, run.Statistics.AcceptedSteps);
    }
}
