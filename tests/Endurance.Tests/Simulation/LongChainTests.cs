using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

public sealed class LongChainTests
{
    /// <summary>Ohm's law: 12 V behind 20 mohm and a chain of 2 mohm feeds, into 5 ohm that returns over 30 mohm and a ground point of 10 mohm.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(40)]
    public void Start_ResistorAtTheEndOfAChainBehindAGroundPoint_FollowsOhmsLaw(int buses)
    {
        var heater = Ohms("heater", $"bus{buses - 1}", 5, 1) with { Return = new ReturnPath { Wire = Wire(30), To = "block" } };
        var scenario = Scenario(0.01) with
        {
            Grounds = [new GroundPoint { Name = "block", Resistance = Resistance.FromMilliohms(10) }],
            Buses = [.. Enumerable.Range(0, buses).Reverse().Select(i => Bus($"bus{i}"))],
            Batteries = [Battery("battery", "bus0", 20, 20, 1.2, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(20))],
            Feeds = [.. Enumerable.Range(1, buses - 1).Select(i => Feed($"feed{i}", $"bus{i - 1}", $"bus{i}", 2))],
            Loads = [heater],
        };
        var amperes = 12 / (0.02 + (0.002 * (buses - 1)) + 5 + 0.03 + 0.01);

        var run = scenario.Run();

        Assert.Equal(amperes, run.Battery("battery").StartCurrent.Amperes, 1e-6);
        Assert.Equal(12 - (amperes * (0.02 + (0.002 * (buses - 1)))), run.Bus($"bus{buses - 1}").StartVoltage.Volts, 1e-6);
        Assert.Equal(12 - (amperes * 0.02), run.Bus("bus0").StartVoltage.Volts, 1e-6);
    }
}
