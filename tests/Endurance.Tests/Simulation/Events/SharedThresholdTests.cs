using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>One threshold for several things: load drops come first and may lift the bus before anything else sees it.</summary>
public sealed class SharedThresholdTests
{
    [Fact]
    public void Cutoff_AtALoadsMinimum_IsNotCrossedWhenTheDropLiftsTheBus()
    {
        // At 10 min the load of 5 A drops at 12.4 V and the bus is back at 12.45 V; the other 5 A take it to 12.4 V two minutes later.
        var scenario = Ramp.Falling(Amperes("tender", "bus", 5, 12.4), Amperes("base", "bus", 5, 5)) with { Buses = [Bus("bus", 12.4)] };

        var run = scenario.Run();

        Assert.Equal(10, run.Load("tender").TimePowered.Minutes(), 1e-5);
        Assert.Equal(12, run.Bus("bus").TimeToCutoff.Minutes(), 1e-5);
    }

    [Fact]
    public void When_AtALoadsMinimum_WaitsForTheNextFall()
    {
        var scenario = Ramp.Falling(Amperes("tender", "bus", 5, 12.4), Amperes("base", "bus", 5, 5));

        var run = scenario.Run(Case(When("bus", 12.4, 0, (ActionVerb.Shed, "base"))));

        Assert.Equal(12, run.Load("base").TimeShed.Minutes(), 1e-5);
    }
}
