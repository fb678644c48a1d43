using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

public sealed class LargeNetworkTests
{
    [Fact]
    public void Network_OfEightBusesTwentyFeedsFortyLoads_KeepsItsBooks()
    {
        var scenario = LargeNetwork.Scenario;

        var run = scenario.Run(LargeNetwork.AlternatorFails);

        Assert.Equal((8, 20, 40), (scenario.Buses.Length, scenario.Feeds.Length, scenario.Loads.Length));
        Assert.InRange(run.EnergyResidual, -1e-5, 1e-5);
        Assert.All(run.Batteries, battery => Assert.NotNull(battery.TimeToExhaustion));
        Assert.All(run.Loads.Skip(16), load => Assert.NotNull(load.LostBecause));
        Assert.All(run.Loads.Take(8), load => Assert.Equal(3, load.TimeShed.Minutes(), 1e-9));
    }
}
